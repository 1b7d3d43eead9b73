import QtQuick
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The window.
Window {
    id: window

    required property AppViewModel app
    property url standIn

    visible: true
    title: qsTr("Spile")
    color: Theme.colours.ground0

    Shell {
        anchors.fill: parent
        app: window.app
        standIn: window.standIn
        focus: true
    }
}
