import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    property string digits: "83"

    title: "Empty for"
    backShown: true
    footer: Pad {
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        glyph: Glyph.Check
        text: "That is right"
    }

    Readout { objectName: "entered"; width: parent.width; text: page.digits; unit: "days" }
    Keypad {
        objectName: "keypad"
        width: parent.width
        keys: ["1", "2", "3", "4", "5", "6", "7", "8", "9", "0"]
        onTyped: key => page.digits += key
        onErased: page.digits = page.digits.slice(0, -1)
    }
}
