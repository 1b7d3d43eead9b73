import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

Item {
    id: window
    width: 390
    height: 400

    Component {
        id: holdPad
        HoldPad { x: 18; y: 18; width: 354; text: "Empty this barrel" }
    }
    SignalSpy { id: held; signalName: "held" }

    TestCase {
        name: "HoldPad"
        when: windowShown

        property HoldPad pad

        function init() {
            Theme.unitsPerMm = 6.04
            pad = createTemporaryObject(holdPad, window)
            held.target = pad
            held.clear()
            waitForRendering(pad)
            wait(100)
            pad.TouchJudge.dry()
        }

        function test_hold_by_touch_data() {
            return [{ tag: "0.3 s", time: 300, count: 0 }, { tag: "0.9 s", time: 900, count: 1 }]
        }
        function test_hold_by_touch(data) {
            const touch = touchEvent(pad)
            touch.press(0, pad).commit()
            wait(data.time)
            touch.release(0, pad).commit()
            compare(held.count, data.count)
            compare(pad.progress, 0)
        }
        function test_shows_how_far_it_is() {
            const filled = findChild(pad, "filled")
            compare(filled.width, 0)
            mousePress(pad)
            tryVerify(() => filled.width > pad.width / 3)
            compare(held.count, 0)
            mouseRelease(pad)
            compare(filled.width, 0)
        }
        function test_slide_off_cancels() {
            const touch = touchEvent(pad)
            touch.press(0, pad).commit()
            wait(300)
            touch.move(0, pad, 100, 200).commit()
            wait(600)
            touch.release(0, pad, 100, 200).commit()
            compare(held.count, 0)
        }
        function test_fires_once_however_long_it_is_held() {
            mousePress(pad)
            tryCompare(held, "count", 1)
            wait(Theme.hold + 200)
            compare(held.count, 1)
            mouseRelease(pad)
        }
        function test_palm_does_not_hold() {
            const touch = touchEvent(pad)
            touch.press(0, pad, 60, 40).commit()
            wait(200)
            touch.stationary(0).press(1, window, 200, 300).commit()
            wait(60)
            touch.stationary(0).release(1, window, 200, 300).commit()
            wait(800)
            compare(held.count, 0)
            touch.release(0, pad, 60, 40).commit()
        }
        function test_space_holds_data() {
            return [{ tag: "0.3 s", time: 300, count: 0 }, { tag: "0.9 s", time: 900, count: 1 }]
        }
        function test_space_holds(data) {
            pad.forceActiveFocus(Qt.TabFocusReason)
            keyPress(Qt.Key_Space)
            wait(data.time)
            keyRelease(Qt.Key_Space)
            compare(held.count, data.count)
        }
        function test_leaving_with_the_key_down_cancels() {
            pad.forceActiveFocus(Qt.TabFocusReason)
            keyPress(Qt.Key_Space)
            wait(300)
            window.forceActiveFocus()
            wait(600)
            keyRelease(Qt.Key_Space)
            compare(held.count, 0)
        }
        function test_disabled_cannot_be_held() {
            pad.enabled = false
            mousePress(pad)
            wait(Theme.hold + 200)
            mouseRelease(pad)
            compare(held.count, 0)
        }
    }
}
