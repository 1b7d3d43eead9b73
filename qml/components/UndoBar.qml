import QtQuick
import Spile.Theme
import Spile.Components

// What was just kept, and the pad that takes it back. Whoever shows it decides how long.
Rectangle {
    id: bar

    property bool shown
    property bool undoShown: true
    property string text

    signal undone()

    visible: bar.shown
    implicitHeight: Math.max(pad.visible ? pad.height : 0, said.height) + 2 * Theme.tightPadding
    color: Theme.colours.ground1

    Words {
        id: said
        anchors {
            left: parent.left
            leftMargin: Theme.margin
            right: pad.visible ? pad.left : parent.right
            rightMargin: pad.visible ? Theme.padding : Theme.margin
            verticalCenter: parent.verticalCenter
        }
        text: bar.text
        Accessible.role: Accessible.AlertMessage
        Accessible.name: bar.text
    }
    Pad {
        id: pad
        objectName: "undo"
        anchors { right: parent.right; rightMargin: Theme.margin; verticalCenter: parent.verticalCenter }
        width: Math.max(Theme.padWidth, Math.min(implicitWidth, bar.width / 2))
        visible: bar.undoShown
        glyph: Glyph.Undo
        text: qsTr("Undo")
        onFired: bar.undone()
    }
}
