import QtQuick
import Spile.Theme
import Spile.Components

// What all things to press have in common: they fire when the finger leaves the screen inside them, however far it slid
// there; once within the lock-out; and only if the touch judge believes the contact. Keys and assistive presses fire
// too.
Item {
    id: target

    property string name // for those who do not see it
    property bool checkable
    property bool checked
    readonly property bool pressed: tap.pressed
    readonly property bool blinking: blink.running // the judge refused a tap

    signal fired()
    signal refusedTap()

    activeFocusOnTab: true
    TouchJudge.unitsPerMm: Theme.unitsPerMm
    Accessible.role: Accessible.Button
    Accessible.name: target.name
    // Qt 6.4 does not tell that an item is disabled.
    Accessible.description: target.enabled ? "" : qsTr("Not available now")
    Accessible.focusable: target.enabled
    Accessible.checkable: target.checkable
    Accessible.checked: target.checked
    Accessible.onPressAction: target.fire()
    Keys.onPressed: event => {
        if ([Qt.Key_Space, Qt.Key_Return, Qt.Key_Enter].includes(event.key)) {
            event.accepted = true
            if (!event.isAutoRepeat) {
                target.fire()
            }
        }
    }

    TapHandler {
        id: tap
        gesturePolicy: TapHandler.ReleaseWithinBounds
        longPressThreshold: Theme.slowestTap
        onTapped: eventPoint => {
            if (lockout.running) {
                return
            }
            if (!target.TouchJudge.accepts(eventPoint)) {
                blink.restart()
                target.refusedTap()
                return
            }
            lockout.start()
            target.fired()
        }
    }
    Timer {
        id: lockout
        interval: Theme.lockout
    }
    Timer {
        id: blink
        interval: Theme.blink
    }

    function fire() {
        if (target.enabled) {
            target.fired()
        }
    }
}
