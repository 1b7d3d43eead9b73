import QtQuick
import Spile.Components
import Spile.Theme

// One thing that was recorded here, and taking it back.
Item {
    id: row

    required property int index
    required property string when
    required property string what
    required property string detail
    required property string stateText
    required property bool voided
    required property bool stays
    signal takenBack()

    implicitHeight: Math.max(words.implicitHeight, undo.visible ? undo.implicitHeight : 0) + Theme.gap

    Column {
        id: words
        anchors { left: parent.left; right: undo.visible ? undo.left : parent.right; rightMargin: undo.visible ? Theme.gap : 0 }

        Text {
            width: parent.width
            text: row.what
            wrapMode: Text.Wrap
            font.strikeout: row.voided
            font.family: Theme.strongBody.family
            font.weight: Theme.strongBody.weight
            font.pixelSize: Theme.strongBody.pixelSize
            color: row.voided ? Theme.colours.secondText : Theme.colours.text
        }
        Text {
            width: parent.width
            visible: row.detail.length > 0
            text: row.detail
            wrapMode: Text.Wrap
            color: Theme.colours.secondText
            font: Theme.body
        }
        Text {
            width: parent.width
            text: qsTr("%1 · %2").arg(row.when).arg(row.stateText)
            wrapMode: Text.Wrap
            color: Theme.colours.secondText
            font: Theme.label
        }
    }
    Pad {
        id: undo
        objectName: "takeBack" + row.index
        anchors.right: parent.right
        width: Theme.mm(22)
        visible: !row.stays
        small: true
        glyph: row.voided ? Glyph.None : Glyph.Undo
        text: row.voided ? qsTr("Let it count") : qsTr("Take back")
        name: qsTr("%1: %2").arg(text).arg(row.what)
        onFired: row.takenBack()
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.outline / 2
        color: Theme.colours.ground2
    }
}
