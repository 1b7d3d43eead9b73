import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The device that asks to be let in: what it is called, and what it may do.
Column {
    id: form

    required property AdmittingViewModel viewModel

    spacing: Theme.gap

    JoinCode { objectName: "device"; width: parent.width; value: form.viewModel.device }
    TextEntry {
        objectName: "name"
        width: parent.width
        label: qsTr("What it is called")
        text: form.viewModel.name
        error: form.viewModel.error
        onEdited: newText => form.viewModel.name = newText
    }
    Pad {
        objectName: "desk"
        width: parent.width
        checkable: true
        chosen: form.viewModel.desk
        text: qsTr("It may let others in")
        hint: qsTr("And cut others off: for a desk")
        onFired: form.viewModel.desk = !form.viewModel.desk
    }
    Pad {
        objectName: "again"
        width: parent.width
        glyph: Glyph.Undo
        text: qsTr("Not this one")
        onFired: form.viewModel.again()
    }
}
