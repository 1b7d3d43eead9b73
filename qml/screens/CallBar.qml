import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// A timer calls: over whatever page is shown, until it is answered or put away.
FocusScope {
    id: bar

    required property AppViewModel app

    visible: bar.app.openWork.call.length > 0

    Rectangle {
        anchors.fill: parent
        color: Theme.colours.act
    }
    MouseArea { // nothing below is touched meanwhile
        anchors.fill: parent
    }
    Column {
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter; margins: Theme.margin }
        spacing: Theme.gap * 2

        Words {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: bar.app.openWork.call
            font: Theme.glance
            color: Theme.colours.actText
            Accessible.role: Accessible.AlertMessage
            Accessible.name: bar.app.openWork.call
        }
        Pad {
            objectName: "answerCall"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            text: qsTr("Go there")
            onFired: bar.app.openWork.answer()
        }
        Pad {
            objectName: "hushCall"
            width: parent.width
            text: qsTr("Later")
            onFired: bar.app.openWork.hush()
        }
    }
}
