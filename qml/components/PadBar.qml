pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// The pads at the foot of the first pages. The middle one is the next move; the one whose page is shown is cut.
Rectangle {
    id: bar

    required property list<string> labels
    required property list<int> glyphs
    property int current: -1

    signal chosen(int index)

    readonly property int count: bar.labels.length
    readonly property real share: (bar.width - 2 * Theme.margin - (bar.count - 1) * Theme.gap) / bar.count

    implicitWidth: Theme.listColumn
    implicitHeight: row.height + Theme.gap + Theme.keepOut
    color: Theme.colours.ground0

    Row {
        id: row
        anchors { top: parent.top; topMargin: Theme.gap; horizontalCenter: parent.horizontalCenter }
        spacing: Theme.gap

        Repeater {
            model: bar.labels
            Pad {
                id: pad
                required property int index
                required property string modelData
                objectName: "bar" + pad.index
                width: bar.share
                leastHeight: Theme.main
                arrangement: Pad.Stacked
                padding: Theme.tightPadding
                glyph: bar.glyphs[pad.index]
                text: pad.modelData
                act: bar.count === 3 && pad.index === 1
                marked: pad.index === bar.current
                checkable: true
                checked: pad.marked
                onFired: bar.chosen(pad.index)
            }
        }
    }
}
