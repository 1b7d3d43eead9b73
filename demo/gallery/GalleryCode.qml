import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    property string code: "7K2"

    title: "Code"
    subtitle: "The six signs on the head"
    backShown: true

    Readout { width: parent.width; text: page.code }
    Keypad {
        width: parent.width
        columns: 6
        keys: ["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "A", "B", "C", "D", "E", "F", "G", "H", "J", "K", "M",
            "N", "P", "Q", "R", "S", "T", "V", "W", "X", "Y", "Z"]
        onTyped: key => page.code += key
        onErased: page.code = page.code.slice(0, -1)
    }
}
