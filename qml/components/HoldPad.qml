import QtQuick
import Spile.Theme
import Spile.Components

// For what cannot be taken back: it fires after it was held for a while, and shows how far that is. To leave it or to
// slide off cancels. An assistive press needs no holding.
Item {
    id: pad

    property string text
    property string hint: qsTr("Hold until it is full")
    property real progress
    readonly property bool holding: touch.pressed || keyDown
    property bool keyDown
    readonly property bool blinking: blink.running

    signal held()
    signal refusedTap()

    implicitWidth: Math.max(Theme.padWidth, face.implicitWidth + 2 * Theme.padding)
    implicitHeight: Math.max(Theme.main, Math.ceil(1.3 * face.implicitHeight))
    activeFocusOnTab: true
    onHoldingChanged: pad.holding ? filling.start() : pad.cancel()
    onActiveFocusChanged: pad.keyDown = false
    onEnabledChanged: pad.keyDown = false

    TouchJudge.unitsPerMm: Theme.unitsPerMm
    Accessible.role: Accessible.Button
    Accessible.name: pad.text
    Accessible.description: pad.enabled ? pad.hint : qsTr("Not available now: %1").arg(pad.hint)
    Accessible.focusable: pad.enabled
    Accessible.onPressAction: if (pad.enabled) pad.held()
    Keys.onSpacePressed: event => pad.keyDown = pad.keyDown || !event.isAutoRepeat
    Keys.onReleased: event => {
        if (event.key === Qt.Key_Space && !event.isAutoRepeat) {
            pad.keyDown = false
        }
    }

    Rectangle {
        anchors.fill: parent
        radius: Theme.corner
        color: pad.enabled ? Theme.colours.ground2 : Theme.colours.ground0
        Rectangle {
            objectName: "filled"
            anchors { left: parent.left; top: parent.top; bottom: parent.bottom }
            width: parent.width * pad.progress
            radius: parent.radius
            color: Theme.colours.band
            Rectangle { // its front
                anchors { right: parent.right; top: parent.top; bottom: parent.bottom }
                width: Theme.focusRing
                visible: pad.progress > 0
                color: Theme.colours.warning
            }
        }
        Rectangle { // over the filling, so that it stays whole
            anchors.fill: parent
            radius: parent.radius
            color: "transparent"
            border.width: pad.holding || pad.blinking ? Theme.focusRing : Theme.outline
            border.color: pad.enabled ? Theme.colours.warning : Theme.colours.ground2
        }
    }
    PadFace {
        id: face
        anchors { fill: parent; leftMargin: Theme.padding; rightMargin: Theme.padding }
        text: pad.text
        hint: pad.hint
        tint: pad.enabled ? Theme.colours.text : Theme.colours.secondText
    }
    FocusRing {}

    TapHandler {
        id: touch
        gesturePolicy: TapHandler.WithinBounds
        longPressThreshold: Theme.slowestTap
    }
    NumberAnimation {
        id: filling
        target: pad
        property: "progress"
        from: 0
        to: 1
        duration: Theme.hold
        onFinished: pad.finish()
    }
    Timer {
        id: blink
        interval: Theme.blink
    }

    function cancel() {
        filling.stop()
        pad.progress = 0
    }
    function finish() {
        const believed = pad.keyDown || pad.TouchJudge.acceptsContact(touch.point.device, touch.point.id)
        pad.cancel()
        if (believed) {
            pad.held()
        } else {
            blink.restart()
            pad.refusedTap()
        }
    }
}
