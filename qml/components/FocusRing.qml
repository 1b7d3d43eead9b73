import QtQuick
import Spile.Theme

// Around what the keyboard would press.
Rectangle {
    anchors.fill: parent
    visible: parent.activeFocus
    radius: Theme.corner
    color: "transparent"
    border.width: Theme.focusRing
    border.color: Theme.colours.focus
}
