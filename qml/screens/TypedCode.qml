import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The code is typed from the label, for when the camera does not read it.
Column {
    id: typed

    required property ScanViewModel viewModel

    spacing: Theme.gap

    Words {
        objectName: "typed"
        width: parent.width
        text: typed.viewModel.typed.length > 0 ? typed.viewModel.typed : "···-···"
        font: Theme.readout
        horizontalAlignment: Text.AlignHCenter
        Accessible.role: Accessible.StaticText
        Accessible.name: typed.viewModel.typed.length > 0 ? qsTr("Typed: %1").arg(typed.viewModel.typed) : qsTr("Nothing typed yet")
    }
    Banner {
        objectName: "typedError"
        width: parent.width
        visible: typed.viewModel.typedError.length > 0
        kind: Banner.Refused
        text: typed.viewModel.typedError
    }
    BarrelSuggestions {
        width: parent.width
        visible: typed.viewModel.suggestions.length > 0
        viewModel: typed.viewModel
    }
    Keypad {
        objectName: "keypad"
        width: parent.width
        keys: typed.viewModel.keys
        columns: 6
        onTyped: key => typed.viewModel.type(key)
        onErased: typed.viewModel.erase()
    }
}
