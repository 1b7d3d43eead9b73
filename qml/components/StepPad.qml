import QtQuick
import Spile.Theme
import Spile.Components

// One of the four pads of a stepper.
Pad {
    id: pad

    required property string label // of what is stepped
    required property int count
    required property string step // as it is written

    padding: Theme.tightPadding
    small: true
    text: (pad.count < 0 ? "−" : "+") + pad.step
    name: (pad.count < 0 ? qsTr("%1: less by %2") : qsTr("%1: more by %2")).arg(pad.label).arg(pad.step)
}
