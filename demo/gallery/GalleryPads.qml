import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    title: "Pads"
    subtitle: "How things to press look"
    backShown: true
    who: "Kim"
    footer: Pad {
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        glyph: Glyph.Scan
        text: "Scan a barrel head"
        hint: "Opens the camera"
    }

    Pad {
        width: parent.width
        glyph: Glyph.More
        text: "Register a barrel"
        hint: "Size, wood and what it held before"
    }
    Pad { width: parent.width; text: "Room 2"; chosen: true; checkable: true }
    Pad { width: parent.width; text: "Room 3"; marked: true; checkable: true }
    Pad {
        objectName: "disabled"
        width: parent.width
        enabled: false
        text: "Close the sheet"
        hint: "Nothing has been scored yet"
    }
    Row {
        width: parent.width
        spacing: Theme.gap
        Pad { width: (parent.width - parent.spacing) / 2; small: true; glyph: Glyph.Photo; text: "Photo" }
        Pad { width: (parent.width - parent.spacing) / 2; small: true; text: "The one before" }
    }
}
