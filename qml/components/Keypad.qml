pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// Keys of one character each, and one that takes the last back. There are at most `columns` in a row, fewer if they
// would become narrower than a key may be.
Flow {
    id: keypad

    required property list<string> keys
    property int columns: 3

    signal typed(string key)
    signal erased()

    readonly property int mostInRow: Math.floor((keypad.width + Theme.gap) / (Theme.keyWidth + Theme.gap))
    readonly property int inRow: Math.max(1, Math.min(keypad.columns, keypad.mostInRow))
    readonly property real keyWidth: Math.floor((keypad.width - (keypad.inRow - 1) * Theme.gap) / keypad.inRow)
    // Erasing gets what is left of the last row, or a row of its own.
    readonly property int vacant: keypad.inRow - keypad.keys.length % keypad.inRow
    readonly property int spanned: keypad.widthOf(keypad.vacant) >= erase.naturalWidth ? keypad.vacant : keypad.inRow

    spacing: Theme.gap
    LayoutMirroring.enabled: false // digits and letters of codes run from the left everywhere
    LayoutMirroring.childrenInherit: true

    Repeater {
        model: keypad.keys
        Pad {
            id: key
            required property string modelData
            objectName: "key" + key.modelData
            width: keypad.keyWidth
            leastHeight: Theme.rung
            padding: 0
            text: key.modelData
            textFont: Theme.code
            onFired: keypad.typed(key.modelData)
        }
    }
    Pad {
        id: erase
        objectName: "erase"
        width: keypad.widthOf(keypad.spanned)
        leastHeight: Theme.rung
        padding: Theme.tightPadding
        glyph: Glyph.Erase
        text: qsTr("Erase")
        onFired: keypad.erased()
    }

    function widthOf(count: int): real {
        return count * keypad.keyWidth + (count - 1) * Theme.gap
    }
}
