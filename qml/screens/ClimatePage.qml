import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The air where the barrel lies.
Page {
    id: page

    required property AppViewModel app
    readonly property ClimateViewModel viewModel: page.app.climate

    title: qsTr("The air of the place")
    subtitle: page.viewModel.place
    backShown: true
    who: page.app.people.name.length > 0 ? page.app.people.name : qsTr("Who?")
    onBackPressed: page.app.goBack()
    onWhoPressed: page.app.navigator.open(Navigator.People)
    banner: Banner { // in sight wherever the page is scrolled to
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    footer: Pad {
        objectName: "record"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        enabled: page.viewModel.canRecord
        text: qsTr("Record")
        hint: page.viewModel.missing
        onFired: page.viewModel.record()
    }

    Words {
        width: parent.width
        text: qsTr("Dry air takes water, damp air alcohol. What is recorded holds for all barrels of the place.")
        color: Theme.colours.secondText
    }
    Fact {
        width: parent.width
        visible: page.viewModel.last.length > 0
        label: qsTr("Last")
        value: page.viewModel.last
    }
    Stepper {
        objectName: "temperature"
        width: parent.width
        label: qsTr("Temperature")
        readout: page.viewModel.temperature
        unit: page.viewModel.temperatureUnit
        smallStep: page.viewModel.temperatureStep
        bigStep: page.viewModel.temperatureBigStep
        empty: !page.viewModel.temperatureKnown
        onBegun: page.viewModel.stepTemperature(0)
        onStepped: count => page.viewModel.stepTemperature(count)
    }
    Stepper {
        objectName: "humidity"
        width: parent.width
        label: qsTr("Humidity")
        readout: page.viewModel.humidity
        unit: "%"
        smallStep: "1"
        bigStep: "10"
        empty: !page.viewModel.humidityKnown
        onBegun: page.viewModel.stepHumidity(0)
        onStepped: count => page.viewModel.stepHumidity(count)
    }
}
