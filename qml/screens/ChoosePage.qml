import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Beside the list of a wide window, before anything is chosen in it.
Item {
    id: page

    required property AppViewModel app

    EmptyNote {
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.margin, Theme.widestContent)
        text: page.app.navigator.root === Navigator.Today ? qsTr("Choose what to do on the left.")
                                                          : qsTr("Choose a barrel on the left, or scan one.")
    }
}
