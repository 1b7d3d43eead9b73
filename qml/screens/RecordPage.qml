import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// One short record about a barrel.
Page {
    id: page

    required property AppViewModel app
    readonly property RecordViewModel viewModel: page.app.record

    title: page.viewModel.title
    subtitle: page.viewModel.barrelName
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

    Banner {
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
        empty: !page.viewModel.volumeKnown
        onBegun: page.viewModel.step(0)
        onStepped: count => page.viewModel.step(count)
    }
    SectionTitle { width: parent.width; text: page.viewModel.question }
    Chips {
        objectName: "choices"
        width: parent.width
        words: page.viewModel.choices
        choice: page.viewModel.choice
        onToggled: index => page.viewModel.choice = index
    }
    TextEntry {
        objectName: "newChoice"
        width: parent.width
        visible: page.viewModel.newChoiceLabel.length > 0
        label: page.viewModel.newChoiceLabel
        text: page.viewModel.newChoice
        onEdited: newText => page.viewModel.newChoice = newText
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
