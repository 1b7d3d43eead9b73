import QtQuick
import Spile.Components
import Spile.Theme

// A month, stepped by one or by twelve.
Column {
    id: stepper

    required property string label
    required property string readout
    property bool canLater: true
    signal stepped(int months)

    spacing: Theme.gap

    Fact {
        width: parent.width
        label: stepper.label
        value: stepper.readout
    }
    Row {
        id: pads
        width: parent.width
        spacing: Theme.gap
        readonly property real padWidth: (stepper.width - 3 * Theme.gap) / 4

        Pad { objectName: "yearEarlier"; width: pads.padWidth; small: true; text: qsTr("1 year"); hint: qsTr("earlier"); onFired: stepper.stepped(-12) }
        Pad { objectName: "monthEarlier"; width: pads.padWidth; small: true; text: qsTr("1 month"); hint: qsTr("earlier"); onFired: stepper.stepped(-1) }
        Pad { objectName: "monthLater"; width: pads.padWidth; small: true; enabled: stepper.canLater; text: qsTr("1 month"); hint: qsTr("later"); onFired: stepper.stepped(1) }
        Pad { objectName: "yearLater"; width: pads.padWidth; small: true; enabled: stepper.canLater; text: qsTr("1 year"); hint: qsTr("later"); onFired: stepper.stepped(12) }
    }
}
