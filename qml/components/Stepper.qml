import QtQuick
import Spile.Theme
import Spile.Components

// A reading of an instrument, set by steps of one and of ten. It keeps nothing. While it is empty, the first tap on any
// pad only asks for a value to begin from.
Column {
    id: stepper

    required property string label
    property string readout
    property string unit
    required property string smallStep // what one step is, as it is written on the pads
    required property string bigStep // ten of them
    property bool canLess: true
    property bool canMore: true
    property string error
    property bool empty

    signal stepped(int count)
    signal begun()

    // Four in a row as long as the words fit; in whole pixels, else the last one's edge is cut.
    readonly property real quarter: Math.floor((stepper.width - 3 * Theme.gap) / 4)
    readonly property bool inOneRow: Math.max(lessTen.naturalWidth, less.naturalWidth) <= stepper.quarter
    readonly property real share: stepper.inOneRow ? stepper.quarter : Math.floor((stepper.width - Theme.gap) / 2)

    spacing: Theme.padding

    Words {
        width: parent.width
        text: stepper.label
        font: Theme.label
        color: Theme.colours.secondText
        Accessible.ignored: true // each pad says it
    }
    Readout {
        width: parent.width
        text: stepper.empty ? "" : stepper.readout
        unit: stepper.unit
    }
    Grid {
        columns: stepper.inOneRow ? 4 : 2
        spacing: Theme.gap
        StepPad {
            id: lessTen
            objectName: "lessTen"
            width: stepper.share
            enabled: stepper.canLess
            label: stepper.label
            count: -10
            step: stepper.bigStep
            onFired: stepper.step(count)
        }
        StepPad {
            id: less
            objectName: "less"
            width: stepper.share
            enabled: stepper.canLess
            label: stepper.label
            count: -1
            step: stepper.smallStep
            onFired: stepper.step(count)
        }
        StepPad {
            objectName: "more"
            width: stepper.share
            enabled: stepper.canMore
            label: stepper.label
            count: 1
            step: stepper.smallStep
            onFired: stepper.step(count)
        }
        StepPad {
            objectName: "moreTen"
            width: stepper.share
            enabled: stepper.canMore
            label: stepper.label
            count: 10
            step: stepper.bigStep
            onFired: stepper.step(count)
        }
    }
    ErrorNote { text: stepper.error }

    function step(count: int) {
        if (stepper.empty) {
            stepper.begun()
        } else {
            stepper.stepped(count)
        }
    }
}
