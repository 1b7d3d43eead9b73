pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// One short record about a lot, or what something cost.
Page {
    id: page

    required property AppViewModel app
    readonly property LotRecordViewModel viewModel: page.app.lotRecord

    title: page.viewModel.title
    subtitle: page.viewModel.about
    backShown: true
    who: page.app.people.name.length > 0 ? page.app.people.name : qsTr("Who?")
    onBackPressed: page.app.goBack()
    onWhoPressed: page.app.navigator.open(Navigator.People)
    banner: Banner { // in sight wherever the page is scrolled to
        objectName: "error"
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

    Banner {
        objectName: "caution"
        width: parent.width
        visible: page.viewModel.caution.length > 0
        kind: Banner.Caution
        text: page.viewModel.caution
    }
    Stepper {
        objectName: "volume"
        width: parent.width
        visible: page.viewModel.asksVolume
        label: qsTr("How much?")
        readout: page.viewModel.volume
        smallStep: page.viewModel.smallStep
        bigStep: page.viewModel.bigStep
        canLess: page.viewModel.canLess
        canMore: page.viewModel.canMore
        onStepped: count => page.viewModel.stepVolume(count)
    }
    Repeater {
        model: page.viewModel.counts
        Stepper {
            id: line
            required property int index
            required property string name
            required property string number
            required canLess
            required canMore
            objectName: "count" + line.index
            width: parent.width
            label: line.name
            readout: line.number
            smallStep: "1"
            bigStep: "10"
            onStepped: count => page.viewModel.stepCount(line.index, count)
        }
    }
    SectionTitle {
        width: parent.width
        visible: page.viewModel.question.length > 0
        text: page.viewModel.question
    }
    Chips {
        objectName: "choices"
        width: parent.width
        visible: page.viewModel.choices.length > 0
        words: page.viewModel.choices
        choice: page.viewModel.choice
        onToggled: index => page.viewModel.choose(index)
    }
    TextEntry {
        objectName: "own"
        width: parent.width
        label: page.viewModel.ownLabel
        text: page.viewModel.own
        onEdited: newText => page.viewModel.own = newText
    }
    TextEntry {
        objectName: "costTyped"
        width: parent.width
        visible: page.viewModel.asksCost
        label: qsTr("How much, in your own money?")
        inputHints: Qt.ImhFormattedNumbersOnly
        text: page.viewModel.cost
        onEdited: newText => page.viewModel.cost = newText
    }
    Stepper {
        objectName: "fills"
        width: parent.width
        visible: page.viewModel.asksFills
        label: qsTr("For how many fills will it serve?")
        readout: page.viewModel.fills
        empty: page.viewModel.fills.length === 0
        smallStep: "1"
        bigStep: "10"
        onBegun: page.viewModel.stepFills(0)
        onStepped: count => page.viewModel.stepFills(count)
    }
    TextEntry {
        objectName: "note"
        width: parent.width
        label: qsTr("A note")
        lines: 2
        text: page.viewModel.note
        onEdited: newText => page.viewModel.note = newText
    }
}
