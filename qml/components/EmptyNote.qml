import QtQuick
import Spile.Theme
import Spile.Components

// Why there is nothing here, and the pad that changes it.
Column {
    id: note

    property string text
    property string padText

    signal acted()

    spacing: Theme.margin

    Words {
        width: parent.width
        text: note.text
        horizontalAlignment: Text.AlignHCenter
        color: Theme.colours.secondText
        Accessible.role: Accessible.StaticText
        Accessible.name: note.text
    }
    Pad {
        objectName: "emptyPad"
        width: parent.width
        visible: note.padText.length > 0
        act: true
        text: note.padText
        onFired: note.acted()
    }
}
