import QtQuick
import Spile.Theme
import Spile.Components

// One line of a record: what it is, the value, and when or how it was found.
Grid {
    id: fact

    required property string label
    property string value
    property string note

    readonly property bool below: Theme.largeText // the value below its label
    readonly property real labelWidth: fact.below ? fact.width : fact.width * 0.3

    columns: fact.below ? 1 : 2
    columnSpacing: Theme.padding
    Accessible.role: Accessible.StaticText
    Accessible.name: fact.spoken()

    Words {
        width: fact.labelWidth
        text: fact.label
        font: Theme.label
        color: Theme.colours.secondText
        height: Math.max(implicitHeight, fact.below ? 0 : value.font.pixelSize * 1.25)
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    Flow {
        width: fact.below ? fact.width : fact.width - fact.labelWidth - fact.columnSpacing
        Words {
            id: value
            rightPadding: note.visible ? Theme.padding : 0
            width: Math.min(Math.ceil(implicitWidth), parent.width)
            visible: fact.value.length > 0
            text: fact.value
            font: Theme.strongBody
            Accessible.ignored: true
        }
        Words {
            id: note
            width: Math.min(Math.ceil(implicitWidth), parent.width)
            visible: fact.note.length > 0
            text: fact.note
            color: Theme.colours.secondText
            Accessible.ignored: true
        }
    }

    function spoken() {
        return Array.of(fact.label, fact.value, fact.note).filter(part => part.length > 0).join(", ")
    }
}
