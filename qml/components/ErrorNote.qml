import QtQuick
import Spile.Theme
import Spile.Components

// What is wrong with the field above it; takes no room if there is nothing.
Row {
    id: note

    property string text

    width: parent.width
    spacing: Theme.padding
    visible: note.text.length > 0

    Glyph {
        id: sign
        kind: Glyph.Refused
        tint: Theme.colours.warning
    }
    Words {
        objectName: "error"
        width: note.width - sign.width - note.spacing
        text: note.text
        Accessible.role: Accessible.AlertMessage
        Accessible.name: note.text
    }
}
