pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme

// The place of rows that are being read. Shown only if that takes a while, and still: nothing glitters.
Column {
    id: rows

    property bool waiting: true
    property int count: 4
    readonly property bool shown: rows.waiting && rows.late
    property bool late

    spacing: Theme.gap
    visible: rows.shown
    onWaitingChanged: rows.late = false
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("The list is being read")

    Timer {
        interval: Theme.patience
        running: rows.waiting && !rows.late
        onTriggered: rows.late = true
    }
    Repeater {
        model: rows.count
        Rectangle {
            width: rows.width
            height: Theme.row
            color: Theme.colours.ground1
            Column {
                anchors.left: parent.left
                anchors.leftMargin: Theme.notchEdge + Theme.padding
                anchors.verticalCenter: parent.verticalCenter
                spacing: Theme.padding
                Rectangle { width: rows.width * 0.4; height: Theme.padding; color: Theme.colours.ground2 }
                Rectangle { width: rows.width * 0.6; height: Theme.padding; color: Theme.colours.ground2 }
            }
        }
    }
}
