import QtQuick
import Spile.Theme
import Spile.Components

// The leading edge of a row, cut like a cooper's mark. The cut is the state: straight, half a notch, a notch, two
// notches, and three cross cuts for what is held back.
Item {
    id: edge

    enum Standing { Resting, Soon, Due, Overdue, Held }

    property int standing: NotchEdge.Resting

    // On a grid of 100 by 100; the cuts are on the side of the text.
    readonly property list<string> cuts: [
        "M0 0 H100 V100 H0 Z",
        "M0 0 H100 V28 L55 50 L100 72 V100 H0 Z",
        "M0 0 H100 V28 L10 50 L100 72 V100 H0 Z",
        "M0 0 H100 V10 L10 28 L100 46 V54 L10 72 L100 90 V100 H0 Z",
        "M0 0 H100 V21 H0 Z M0 28 H100 V46 H0 Z M0 54 H100 V72 H0 Z M0 79 H100 V100 H0 Z"
    ]
    readonly property list<color> tints: [Theme.colours.resting, Theme.colours.soon, Theme.colours.due,
        Theme.colours.overdue, Theme.colours.held]

    implicitWidth: Theme.notchEdge
    implicitHeight: Theme.row
    Accessible.ignored: true // a word beside it says the same

    Drawing {
        anchors.fill: parent
        grid: Qt.size(100, 100)
        path: edge.cuts[edge.standing]
        fill: edge.tints[edge.standing]
        transform: Scale {
            origin.x: edge.width / 2
            xScale: edge.LayoutMirroring.enabled ? -1 : 1
        }
    }
}
