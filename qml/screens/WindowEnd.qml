import QtQuick
import Spile.Components
import Spile.Theme

// One end of a window, moved by a step.
Column {
    id: end

    required property string label // as it is spoken
    required property string word
    property bool canLess
    property bool canMore

    signal stepped(int by)

    spacing: Theme.padding

    Words {
        width: parent.width
        text: end.word
        font: Theme.label
        color: Theme.colours.secondText
        Accessible.ignored: true // each pad says it
    }
    Row {
        width: parent.width
        spacing: Theme.gap

        StepPad {
            objectName: "less"
            width: (end.width - Theme.gap) / 2
            enabled: end.canLess
            label: end.label
            count: -1
            step: "1"
            onFired: end.stepped(-1)
        }
        StepPad {
            objectName: "more"
            width: (end.width - Theme.gap) / 2
            enabled: end.canMore
            label: end.label
            count: 1
            step: "1"
            onFired: end.stepped(1)
        }
    }
}
