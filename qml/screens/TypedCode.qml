import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The code is typed from the label, for when the camera does not read it. A whole code that cannot be right takes the
// place of the keys: more of them would not help.
Column {
    id: typed

    required property ScanViewModel viewModel
    readonly property bool wrong: typed.viewModel.typedError.length > 0

    spacing: Theme.gap

    Banner {
        objectName: "typedError"
        width: parent.width
        visible: typed.wrong
        kind: Banner.Refused
        text: typed.viewModel.typedError
    }
    BarrelPads {
        width: parent.width
        visible: typed.wrong
        names: typed.viewModel.suggestions
        codes: typed.viewModel.suggestedCodes
        prefix: "suggestion"
        onChosen: index => typed.viewModel.chooseSuggestion(index)
    }
    Pad {
        objectName: "change"
        width: parent.width
        visible: typed.wrong
        glyph: Glyph.Erase
        text: qsTr("Change the last character")
        onFired: typed.viewModel.erase()
    }
    Pad {
        objectName: "clear"
        width: parent.width
        visible: typed.wrong
        text: qsTr("Type it anew")
        onFired: typed.viewModel.clear()
    }
    Keypad {
        objectName: "keypad"
        width: parent.width
        visible: !typed.wrong
        keys: typed.viewModel.keys
        columns: 6
        onTyped: key => typed.viewModel.type(key)
        onErased: typed.viewModel.erase()
    }
}
