import QtQuick
import Spile.Theme
import Spile.Components

// One thing of a list; the whole row is pressed. It grows with its text.
PressTarget {
    id: row

    required property string title
    property string code
    property string firstLine
    property string secondLine
    property int standing: NotchEdge.Resting
    property string standingWord // what the cut of the edge says
    property bool showEdge: true

    signal opened()

    name: row.spoken()
    implicitWidth: Theme.listColumn
    implicitHeight: Math.max(Theme.row, Math.ceil(lines.height + 2 * Theme.padding))
    onFired: row.opened()

    Rectangle {
        anchors.fill: parent
        color: row.pressed ? Theme.colours.ground2 : row.enabled ? Theme.colours.ground1 : Theme.colours.ground0
        border.width: row.blinking ? Theme.focusRing : row.enabled ? 0 : Theme.outline
        border.color: row.blinking ? Theme.colours.warning : Theme.colours.ground1
    }
    NotchEdge {
        id: edge
        anchors { left: parent.left; top: parent.top; bottom: parent.bottom }
        width: row.showEdge ? Theme.notchEdge : 0
        visible: row.showEdge
        standing: row.standing
    }
    Column {
        id: lines
        anchors {
            left: edge.right
            leftMargin: Theme.padding
            right: parent.right
            rightMargin: Theme.padding
            verticalCenter: parent.verticalCenter
        }

        Flow { // the code goes below the title if both do not fit
            width: parent.width
            Words {
                id: title
                rightPadding: Theme.padding
                width: Math.min(Math.ceil(implicitWidth), parent.width)
                text: row.title
                font: Theme.strongGlance
                color: row.enabled ? Theme.colours.text : Theme.colours.secondText
                Accessible.ignored: true
            }
            Words {
                width: Math.min(Math.ceil(implicitWidth), parent.width)
                height: Math.max(implicitHeight, title.lineCount > 1 ? 0 : title.height)
                verticalAlignment: Text.AlignVCenter
                visible: row.code.length > 0
                text: row.code
                font: Theme.smallCode
                color: Theme.colours.secondText
                Accessible.ignored: true
            }
        }
        Flow {
            width: parent.width
            Words {
                rightPadding: Theme.padding
                width: Math.min(Math.ceil(implicitWidth), parent.width)
                visible: row.standingWord.length > 0
                text: row.standingWord
                font: Theme.strongBody
                Accessible.ignored: true
            }
            Words {
                width: Math.min(Math.ceil(implicitWidth), parent.width)
                visible: row.firstLine.length > 0
                text: row.firstLine
                color: Theme.colours.secondText
                Accessible.ignored: true
            }
        }
        Words {
            width: parent.width
            visible: row.secondLine.length > 0
            text: row.secondLine
            color: Theme.colours.secondText
            Accessible.ignored: true
        }
    }
    FocusRing {}

    function spoken() {
        const parts = Array.of(row.title, row.code, row.standingWord, row.firstLine, row.secondLine)
        return parts.filter(part => part.length > 0).join(", ")
    }
}
