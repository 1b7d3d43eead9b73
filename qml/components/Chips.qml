pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// Words of which one or any number may be chosen; in two columns or three, or one if the text is large. It keeps nothing.
Grid {
    id: chips

    required property list<string> words
    property list<bool> chosen // for each word
    property int choice: -1 // or the one of them that is chosen
    property bool narrow: Theme.largeText
    property int mostInARow: 2 // 3 for short words

    signal toggled(int index)

    columns: chips.narrow ? 1 : chips.width < Theme.mm(50) ? 2 : chips.mostInARow
    spacing: Theme.gap

    Repeater {
        id: repeater
        model: chips.words
        Pad {
            id: chip
            required property int index
            required property string modelData
            objectName: "chip" + chip.index
            width: Math.floor((chips.width - (chips.columns - 1) * Theme.gap) / chips.columns) // else the last one's edge is cut
            leastHeight: Theme.rung
            text: chip.modelData
            checkable: true
            chosen: chip.index === chips.choice || (chips.chosen[chip.index] ?? false)
            onFired: chips.toggled(chip.index)
        }
    }
}
