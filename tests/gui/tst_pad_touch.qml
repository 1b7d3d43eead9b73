import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

// What counts as a tap and what the touch judge refuses.
Item {
    id: window
    width: 390
    height: 844

    Component {
        id: padOverPad
        Column {
            readonly property Pad first: upper
            readonly property Pad second: lower
            x: 18
            width: 354
            spacing: 12
            Pad { id: upper; width: parent.width; height: 91; text: "Upper" }
            Pad { id: lower; width: parent.width; height: 91; text: "Lower" }
        }
    }
    Component {
        id: widePad
        Pad { width: window.width; height: 91; text: "From side to side" }
    }
    SignalSpy { id: fired; signalName: "fired" }
    SignalSpy { id: secondFired; signalName: "fired" }
    SignalSpy { id: refused; signalName: "refusedTap" }

    TestCase {
        id: cases
        name: "PadTouch"
        when: windowShown

        property Pad pad
        property Pad other

        function init() {
            Theme.unitsPerMm = 6.04
            const both = createTemporaryObject(padOverPad, window)
            pad = both.first
            other = both.second
            watch(pad)
            secondFired.target = other
            secondFired.clear()
            waitForRendering(both)
            wait(100) // so that the contacts of the test before are no part of a splash
            pad.TouchJudge.dry()
        }

        function watch(item: Item) {
            fired.target = item
            refused.target = item
            fired.clear()
            refused.clear()
        }

        function tap(item: Item, milliseconds: int) {
            const touch = touchEvent(item)
            touch.press(0, item).commit()
            wait(milliseconds)
            touch.release(0, item).commit()
        }

        function test_fires_on_release_and_not_before() {
            const touch = touchEvent(pad)
            touch.press(0, pad).commit()
            wait(60)
            compare(fired.count, 0)
            verify(pad.pressed)
            touch.release(0, pad).commit()
            compare(fired.count, 1)
        }
        function test_slide_inside_keeps() {
            const touch = touchEvent(pad)
            touch.press(0, pad, 60, 40).commit()
            wait(60)
            touch.move(0, pad, 85, 42).commit()
            touch.move(0, pad, 108, 45).commit() // 8 mm
            touch.release(0, pad, 108, 45).commit()
            compare(fired.count, 1)
        }
        function test_slide_off_cancels() {
            const touch = touchEvent(pad)
            touch.press(0, pad, 60, 40).commit()
            wait(60)
            touch.move(0, pad, 60, 140).commit()
            touch.release(0, pad, 60, 140).commit()
            compare(fired.count, 0)
            compare(secondFired.count, 0)
        }
        function test_slow_press_counts() {
            tap(pad, 1500)
            compare(fired.count, 1)
        }
        function test_drop_is_refused_and_shown() {
            const before = pad.TouchJudge.refusedTooShort
            tap(pad, 8)
            compare(fired.count, 0)
            compare(refused.count, 1)
            compare(pad.TouchJudge.refusedTooShort, before + 1)
            verify(pad.blinking)
            tryCompare(pad, "blinking", false)
        }
        function test_mouse_is_not_judged_by_a_drop_before_it() {
            tap(pad, 8)
            mouseClick(pad)
            compare(fired.count, 1)
        }
        function test_splash_is_refused() {
            const touch = touchEvent(pad)
            touch.press(0, pad, 60, 40).press(1, other, 60, 40).press(2, other, 200, 40).commit()
            wait(60)
            touch.release(0, pad, 60, 40).release(1, other, 60, 40).release(2, other, 200, 40).commit()
            compare(fired.count + secondFired.count, 0)
        }
        function test_palm_loses_to_a_finger() {
            const touch = touchEvent(pad)
            touch.press(0, pad, 60, 40).commit()
            wait(200)
            touch.stationary(0).press(1, other, 100, 40).commit()
            wait(60)
            touch.stationary(0).release(1, other, 100, 40).commit()
            compare(secondFired.count, 1)
            wait(30)
            touch.release(0, pad, 60, 40).commit()
            compare(fired.count, 0)
            compare(secondFired.count, 1)
        }
        function test_bounce_is_locked_out() {
            tap(pad, 40)
            wait(60)
            tap(pad, 40)
            compare(fired.count, 1)
            compare(refused.count, 0)
            wait(Theme.lockout)
            tap(pad, 40)
            compare(fired.count, 2)
        }
        function test_lock_out_is_of_one_pad() {
            tap(pad, 40)
            wait(60)
            tap(other, 40)
            compare(fired.count, 1)
            compare(secondFired.count, 1)
        }
        function test_grip_at_the_side_is_refused_data() {
            return [{ tag: "left", x: 6, fires: 0 }, { tag: "right", x: 384, fires: 0 },
                    { tag: "inside", x: 14, fires: 1 }]
        }
        function test_grip_at_the_side_is_refused(data) {
            const wide = createTemporaryObject(widePad, window, { y: 300 })
            watch(wide)
            const touch = touchEvent(wide)
            touch.press(0, wide, data.x, 40).commit()
            wait(60)
            touch.release(0, wide, data.x, 40).commit()
            compare(fired.count, data.fires)
        }
        function test_three_refusals_make_it_wet_until_wiped() {
            verify(!pad.TouchJudge.wet)
            for (let i = 0; i < 3; ++i) {
                tap(pad, 8)
                wait(100)
            }
            verify(pad.TouchJudge.wet)
            verify(other.TouchJudge.wet, "one judge for the window")
            tap(pad, 42)
            compare(fired.count, 0)
            wait(100)
            pad.TouchJudge.dry()
            verify(!pad.TouchJudge.wet)
            tap(pad, 42)
            compare(fired.count, 1)
        }
    }
}
