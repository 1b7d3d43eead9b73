pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What happened to a barrel, the newest first.
Column {
    id: list

    required property HistoryRows rows

    spacing: Theme.gap

    Repeater {
        model: list.rows

        Column {
            id: line

            required property string when
            required property string what
            required property string detail
            required property string who
            required property url photo

            width: list.width
            spacing: Theme.gap / 2

            Fact {
                width: parent.width
                label: line.when
                value: line.what
                note: line.who
            }
            Text {
                width: parent.width
                visible: line.detail.length > 0
                text: line.detail
                wrapMode: Text.Wrap
                color: Theme.colours.text
                font: Theme.body
            }
            PhotoFrame {
                width: parent.width
                height: Theme.mm(40)
                visible: line.photo != ""
                source: line.photo
                description: qsTr("%1, %2").arg(line.what).arg(line.when)
            }
            Rectangle {
                width: parent.width
                height: Theme.outline / 2
                color: Theme.colours.ground2
            }
        }
    }
}
