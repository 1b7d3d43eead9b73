import QtQuick
import Spile.Theme

// The body of a pad. A cut in its leading edge says that it is chosen, so that this can be seen without colour.
Rectangle {
    id: ground

    property bool brass // filled
    property bool cut
    property bool strong // outlined: pressed, or one of the two that a value lies between
    property bool refused
    property bool flat // cannot be pressed now: without a body

    readonly property color fill: ground.flat ? Theme.colours.ground0
                                : ground.brass ? Theme.colours.act : Theme.colours.ground2
    readonly property color edge: ground.flat ? Theme.colours.ground2
                                : ground.brass ? Theme.colours.act : Theme.colours.line

    radius: Theme.corner
    color: ground.fill
    border.width: ground.strong || ground.refused ? Theme.focusRing : Theme.outline
    border.color: ground.refused ? Theme.colours.warning : ground.strong ? Theme.colours.text : ground.edge

    Rectangle { // a square on its corner, of which half lies on the pad
        anchors.verticalCenter: parent.verticalCenter
        anchors.horizontalCenter: parent.left
        width: Theme.notch * Math.SQRT2
        height: width
        visible: ground.cut
        rotation: 45
        antialiasing: true
        color: Theme.colours.ground0
    }
}
