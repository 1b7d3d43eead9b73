pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// A span of time on a bar, with a mark for something in it and a line for now. All as shares of the bar, 0 to 1; less
// than 0: there is none.
Item {
    id: bar

    property real from: -1
    property real to: -1
    property real mark: -1
    property real now: -1
    property list<real> places // faint lines

    implicitWidth: Theme.listColumn
    implicitHeight: Theme.glyph
    LayoutMirroring.enabled: false // time runs from the left
    LayoutMirroring.childrenInherit: true
    Accessible.ignored: true // its words stand beside it

    Rectangle {
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width
        height: Theme.chartLine
        color: Theme.colours.ground2
    }
    Repeater {
        model: bar.places
        Rectangle {
            required property real modelData
            x: modelData * bar.width
            width: Theme.hairline
            height: bar.height
            color: Theme.colours.line
        }
    }
    Rectangle {
        objectName: "span"
        x: bar.from * bar.width
        width: Math.max((bar.to - bar.from) * bar.width, Theme.chartMark)
        height: parent.height
        visible: bar.from >= 0
        color: Theme.colours.band
        border.width: Theme.outline
        border.color: Theme.colours.bandEdge
    }
    ChartLine {
        objectName: "mark"
        anchors.fill: parent
        visible: bar.mark >= 0
        range: Qt.rect(0, -1, 1, 2)
        points: [Qt.point(bar.mark, 0)]
        tint: Theme.colours.text
        markSize: Theme.chartMark
        marksOnly: true
    }
    Rectangle {
        objectName: "now"
        x: bar.now * bar.width - width / 2
        width: Theme.outline
        height: parent.height
        visible: bar.now >= 0
        color: Theme.colours.focus
    }
}
