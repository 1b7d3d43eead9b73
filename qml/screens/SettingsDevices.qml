import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// This device's own code, and letting others in.
Column {
    id: part

    required property AppViewModel app
    readonly property JoiningViewModel viewModel: part.app.joining

    spacing: Theme.gap

    SectionTitle { width: parent.width; text: qsTr("This device") }
    Banner {
        width: parent.width
        visible: !part.viewModel.admitted && !part.viewModel.cutOff
        kind: Banner.Note
        text: qsTr("A desk has to let this phone in by its code. Until then its records wait at the other devices; none is lost.")
    }
    TodayStanding { width: parent.width; viewModel: part.viewModel }
    Fact { objectName: "ownCode"; width: parent.width; label: qsTr("Its code"); value: part.viewModel.ownCode }
    SectionTitle { width: parent.width; visible: part.viewModel.mayAdmit; text: qsTr("Let another device in") }
    TextEntry {
        objectName: "code"
        width: parent.width
        visible: part.viewModel.mayAdmit
        label: qsTr("The code that it shows")
        text: part.viewModel.code
        onEdited: newText => part.viewModel.code = newText
    }
    TextEntry {
        objectName: "name"
        width: parent.width
        visible: part.viewModel.mayAdmit
        label: qsTr("What it is called")
        text: part.viewModel.name
        error: part.viewModel.error
        onEdited: newText => part.viewModel.name = newText
    }
    Pad {
        objectName: "admit"
        width: parent.width
        visible: part.viewModel.mayAdmit && part.viewModel.code.length > 0
        act: true
        text: qsTr("Let it in")
        onFired: part.viewModel.admit()
    }
    Text {
        width: parent.width
        visible: part.viewModel.result.length > 0
        text: part.viewModel.result
        wrapMode: Text.Wrap
        color: Theme.colours.text
        font: Theme.strongBody
    }
    ToSettlePad { width: parent.width; app: part.app }
    Pad {
        objectName: "devices"
        width: parent.width
        text: qsTr("Devices")
        hint: qsTr("Which there are, their clocks, cutting one off")
        onFired: part.app.openDevices()
    }
}
