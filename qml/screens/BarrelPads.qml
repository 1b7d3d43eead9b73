pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme

// Barrels that may be meant, each a pad with its name and code.
Flow {
    id: pads

    required property list<string> names
    required property list<string> codes
    required property string prefix // of the pads' names
    property int columns: 1
    readonly property real share: (pads.width - (pads.columns - 1) * pads.spacing) / pads.columns

    signal chosen(index: int)

    spacing: Theme.gap

    Repeater {
        model: pads.names
        Pad {
            id: pad
            required property int index
            required property string modelData
            objectName: pads.prefix + pad.index
            width: pads.share
            leastHeight: Theme.rung
            arrangement: pads.columns > 1 ? Pad.Centred : Pad.Leading
            text: pad.modelData
            hint: pads.codes[pad.index] ?? ""
            onFired: pads.chosen(pad.index)
        }
    }
}
