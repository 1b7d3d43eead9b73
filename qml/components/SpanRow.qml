import QtQuick
import Spile.Theme
import Spile.Components

// One thing of a list with a span of time: its words, and the span on a bar, beside them where there is room. The whole
// row is pressed.
PressTarget {
    id: row

    required property string title
    required property string best // what the span is
    required property string contents
    required property string next // what the mark is
    property real from: -1
    property real to: -1
    property real mark: -1
    property real now: -1
    property list<real> places

    signal opened()

    readonly property bool wide: row.width >= Theme.mm(100) && !Theme.largeText
    readonly property real inner: row.width - 2 * Theme.padding

    name: Array.of(row.title, row.best, row.contents, row.next).filter(part => part.length > 0).join(", ")
    implicitWidth: Theme.listColumn
    implicitHeight: Math.max(Theme.row, Math.ceil(lines.height + 2 * Theme.padding))
    onFired: row.opened()

    Rectangle {
        anchors.fill: parent
        color: row.pressed ? Theme.colours.ground2 : Theme.colours.ground1
        border.width: row.blinking ? Theme.focusRing : 0
        border.color: Theme.colours.warning
    }
    Grid {
        id: lines
        x: Theme.padding
        anchors.verticalCenter: parent.verticalCenter
        columns: row.wide ? 2 : 1
        spacing: Theme.padding
        verticalItemAlignment: Grid.AlignVCenter

        Column {
            width: row.wide ? row.inner - row.barWidth() - lines.spacing : row.inner

            Words {
                width: parent.width
                text: row.title
                font: Theme.strongBody
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                text: row.best
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                text: Array.of(row.contents, row.next).filter(part => part.length > 0).join(" · ")
                font: Theme.label
                color: Theme.colours.secondText
                Accessible.ignored: true
            }
        }
        SpanBar {
            width: row.barWidth()
            from: row.from
            to: row.to
            mark: row.mark
            now: row.now
            places: row.places
        }
    }
    FocusRing {}

    function barWidth(): real {
        return row.wide ? Math.round(row.inner * 0.6) : row.inner
    }
}
