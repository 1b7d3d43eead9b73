pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What would become of the barrel, beside what becomes of it as it is. Nothing here is recorded.
Page {
    id: page

    required property AppViewModel app
    readonly property WhatIfViewModel viewModel: page.app.whatIf

    title: qsTr("What if?")
    subtitle: page.viewModel.barrelName
    backShown: true
    onBackPressed: page.app.goBack()
    footer: Pad {
        objectName: "reset"
        width: parent.width
        visible: page.viewModel.anything
        text: qsTr("As it is again")
        onFired: page.viewModel.reset()
    }

    Banner {
        objectName: "error"
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    Fact {
        objectName: "adviceNow"
        width: parent.width
        label: qsTr("As it is")
        value: page.viewModel.adviceNow
        note: page.viewModel.tasteNow.length > 0 ? qsTr("Taste next: %1").arg(page.viewModel.tasteNow) : ""
    }
    Fact {
        objectName: "adviceThen"
        width: parent.width
        visible: page.viewModel.anything
        label: qsTr("As it would be")
        value: page.viewModel.adviceThen
        note: page.viewModel.tasteThen.length > 0 ? qsTr("Taste next: %1").arg(page.viewModel.tasteThen) : ""
    }
    OutlookChance {
        width: parent.width
        visible: page.app.outlook.windows
        viewModel: page.app.outlook
        insideWord: qsTr("as it is")
        otherLine: page.viewModel.insideThen
        otherWord: page.viewModel.anything ? qsTr("as it would be") : ""
    }
    SectionTitle {
        width: parent.width
        text: qsTr("In a warmer or cooler place")
    }
    Words {
        width: parent.width
        text: page.viewModel.placeNow
        color: Theme.colours.secondText
    }
    Stepper {
        objectName: "temperature"
        width: parent.width
        label: qsTr("Temperature there")
        readout: page.viewModel.temperature
        unit: page.viewModel.temperatureUnit
        smallStep: page.viewModel.temperatureStep
        bigStep: page.viewModel.temperatureBigStep
        empty: !page.viewModel.temperatureKnown
        onBegun: page.viewModel.stepTemperature(0)
        onStepped: count => page.viewModel.stepTemperature(count)
    }
    SectionTitle {
        width: parent.width
        text: qsTr("After a top-up with young beer")
    }
    Stepper {
        objectName: "topUp"
        width: parent.width
        label: qsTr("Volume added")
        readout: page.viewModel.topUp
        smallStep: page.viewModel.volumeStep
        bigStep: page.viewModel.bigVolumeStep
        empty: !page.viewModel.topUpKnown
        onBegun: page.viewModel.stepTopUp(0)
        onStepped: count => page.viewModel.stepTopUp(count)
    }
    SectionTitle {
        width: parent.width
        visible: page.viewModel.others.length > 0
        text: qsTr("Mixed with another barrel")
    }
    Stepper {
        objectName: "share"
        width: parent.width
        visible: page.viewModel.other >= 0
        label: qsTr("Share of the other")
        readout: page.viewModel.share
        unit: "%"
        smallStep: "1"
        bigStep: "10"
        onStepped: count => page.viewModel.stepShare(count)
    }
    Chips {
        objectName: "others"
        width: parent.width
        words: page.viewModel.others
        choice: page.viewModel.other
        onToggled: index => page.viewModel.chooseOther(index)
    }
}
