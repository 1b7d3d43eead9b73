import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// In the place of the list of a wide window while a flight is tasted: a list would name barrels.
Item {
    id: note

    required property AppViewModel app

    EmptyNote {
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.margin, Theme.widestContent)
        text: qsTr("A flight is being tasted. Barrels and scores are hidden until your last glass.")
    }
}
