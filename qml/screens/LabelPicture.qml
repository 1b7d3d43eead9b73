import QtQuick
import Spile.Components
import Spile.Theme

// One label as it is printed: black on white, whatever the palette, though in its colours.
Rectangle {
    id: label

    required property string path // in mm
    required property size paper // mm
    required property string description
    required property real widest
    required property real highest

    readonly property bool darkOnLight: Theme.palette === Theme.Light
    readonly property bool shown: label.paper.width > 0 && label.paper.height > 0
    readonly property real pixelsPerMm: label.shown ? Math.min(label.widest / label.paper.width,
                                                               label.highest / label.paper.height) : 0

    width: label.pixelsPerMm * label.paper.width
    height: label.pixelsPerMm * label.paper.height
    color: label.darkOnLight ? Theme.colours.ground1 : Theme.colours.text
    Accessible.role: Accessible.Graphic
    Accessible.name: label.description

    Drawing {
        objectName: "ink"
        anchors.fill: parent
        visible: label.shown
        path: label.path
        grid: label.paper
        fill: label.darkOnLight ? Theme.colours.text : Theme.colours.ground0
    }
}
