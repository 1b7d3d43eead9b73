pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// Words of which one or any number may be chosen; in two columns, or one if the text is large. It keeps nothing.
Grid {
    id: chips

    required property list<string> words
    property list<bool> chosen // for each word
    property int choice: -1 // or the one of them that is chosen
    property bool narrow: Theme.largeText

    signal toggled(int index)

    columns: chips.narrow ? 1 : 2
    spacing: Theme.gap

    Repeater {
        id: repeater
        model: chips.words
        Pad {
            id: chip
            required property int index
            required property string modelData
            objectName: "chip" + chip.index
            width: chips.narrow ? chips.width : (chips.width - Theme.gap) / 2
            leastHeight: Theme.rung
            text: chip.modelData
            checkable: true
            chosen: chip.index === chips.choice || (chips.chosen[chip.index] ?? false)
            onFired: chips.toggled(chip.index)
        }
    }
}
