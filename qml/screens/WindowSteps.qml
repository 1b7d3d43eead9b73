import QtQuick
import Spile.Components
import Spile.Theme

// The window of one attribute: from where to where on the ladder, or none.
Column {
    id: row

    required property int index
    required property string name
    required property string windowText
    required property bool given
    required property bool canLower
    required property bool canNarrow
    required property bool canRaise
    readonly property real half: Theme.largeText ? width : (width - Theme.gap) / 2

    signal toggled()
    signal lowStepped(int by)
    signal highStepped(int by)

    spacing: Theme.padding

    Grid {
        width: parent.width
        columns: Theme.largeText ? 1 : 2
        spacing: Theme.gap

        Column {
            id: said
            width: Theme.largeText ? parent.width : Math.round(parent.width * 0.64) - Theme.gap
            objectName: "window" + row.index
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("%1: %2").arg(row.name).arg(row.windowText)

            Words { width: parent.width; text: row.name; font: Theme.strongBody; Accessible.ignored: true }
            Words { width: parent.width; text: row.windowText; color: Theme.colours.secondText; Accessible.ignored: true }
        }
        Pad {
            objectName: "toggle" + row.index
            width: Theme.largeText ? parent.width : parent.width - said.width - parent.spacing
            leastHeight: Theme.rung
            small: true
            text: row.given ? qsTr("No window") : qsTr("Set a window")
            name: row.given ? qsTr("%1: no window").arg(row.name) : qsTr("%1: set a window").arg(row.name)
            onFired: row.toggled()
        }
    }
    Grid {
        width: parent.width
        visible: row.given
        columns: Theme.largeText ? 1 : 2
        spacing: Theme.gap

        WindowEnd {
            objectName: "from" + row.index
            width: row.half
            label: qsTr("%1, from").arg(row.name)
            word: qsTr("From")
            canLess: row.canLower
            canMore: row.canNarrow
            onStepped: by => row.lowStepped(by)
        }
        WindowEnd {
            objectName: "to" + row.index
            width: row.half
            label: qsTr("%1, to").arg(row.name)
            word: qsTr("To")
            canLess: row.canNarrow
            canMore: row.canRaise
            onStepped: by => row.highStepped(by)
        }
    }
}
