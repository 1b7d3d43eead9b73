import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

// Pads by mouse and keys, and how they look.
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
    SignalSpy { id: fired; signalName: "fired" }

    TestCase {
        id: cases
        name: "Pad"
        when: windowShown

        property Pad pad
        property Pad other

        function init() {
            Theme.unitsPerMm = 6.04
            const both = createTemporaryObject(padOverPad, window)
            pad = both.first
            other = both.second
            fired.target = pad
            fired.clear()
            waitForRendering(both)
        }

        function test_mouse_is_not_judged() {
            mouseClick(pad)
            compare(fired.count, 1)
        }
        function test_keys_press_data() {
            return [{ tag: "space", key: Qt.Key_Space }, { tag: "return", key: Qt.Key_Return },
                    { tag: "enter", key: Qt.Key_Enter }]
        }
        function test_keys_press(data) {
            pad.forceActiveFocus(Qt.TabFocusReason)
            keyClick(data.key)
            compare(fired.count, 1)
            keyClick(Qt.Key_A)
            compare(fired.count, 1)
        }
        function test_tab_goes_to_the_next_pad() {
            pad.forceActiveFocus(Qt.TabFocusReason)
            keyClick(Qt.Key_Tab)
            verify(other.activeFocus)
            keyClick(Qt.Key_Backtab)
            verify(pad.activeFocus)
        }
        function test_disabled_fires_nothing() {
            pad.enabled = false
            mouseClick(pad)
            touchEvent(pad).press(0, pad).commit()
            wait(60)
            touchEvent(pad).release(0, pad).commit()
            pad.fire()
            compare(fired.count, 0)
        }
        function test_focus_and_choice_can_be_seen() {
            const plain = grabImage(window)
            pad.forceActiveFocus(Qt.TabFocusReason)
            waitForRendering(pad)
            const focused = grabImage(window)
            verify(!focused.equals(plain))
            window.forceActiveFocus()
            pad.chosen = true
            waitForRendering(pad)
            const chosen = grabImage(window)
            compare(chosen.pixel(200, 10), Theme.colours.act)
            compare(chosen.pixel(20, 45), Theme.colours.ground0, "the cut")
        }
        function test_grows_with_its_text() {
            const low = pad.implicitHeight
            pad.text = "Text that does not fit in one line of a pad, nor in two of them, and not in three lines. " +
                       "Nor in four lines, which takes some more words."
            tryVerify(() => pad.implicitHeight > low)
        }
        function test_name_has_words_before_numbers() {
            pad.hint = "below"
            compare(pad.name, "Upper, below")
        }
    }
}
