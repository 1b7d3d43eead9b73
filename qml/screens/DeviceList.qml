pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Devices as rows, of which there may be many: what each may do, the pad of its clock, and the one that cuts it off.
LongList {
    id: list

    required property PartRows lines
    signal clockWanted(int index)
    signal cutWanted(int index)

    model: list.lines

    delegate: Column {
        id: row

        required property int index
        required property string said
        required property string beside
        required property string padText
        required property string otherText

        objectName: "part" + row.index
        width: list.width
        spacing: Theme.tightPadding
        Accessible.role: Accessible.ListItem
        Accessible.name: row.said + ". " + row.beside

        Words {
            width: parent.width
            text: row.said
            font: Theme.strongBody
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            text: row.beside
            color: Theme.colours.secondText
            Accessible.ignored: true
        }
        Column {
            width: parent.width
            spacing: Theme.gap

            Pad {
                objectName: "act" + row.index
                width: parent.width
                visible: row.padText.length > 0
                small: true
                text: row.padText
                name: qsTr("%1: %2").arg(row.said).arg(row.padText)
                onFired: list.clockWanted(row.index)
            }
            Pad {
                objectName: "other" + row.index
                width: parent.width
                visible: row.otherText.length > 0
                small: true
                text: row.otherText
                name: qsTr("%1: %2").arg(row.said).arg(row.otherText)
                onFired: list.cutWanted(row.index)
            }
        }
    }
}
