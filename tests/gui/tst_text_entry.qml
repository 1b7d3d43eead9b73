import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

Item {
    id: window
    width: 390
    height: 844

    Component {
        id: entryOf
        TextEntry {
            width: 354
            label: "Mark"
            onEdited: newText => text = newText
        }
    }
    SignalSpy { id: spy }
    SignalSpy { id: otherSpy }

    TestCase {
        name: "TextEntry"
        when: windowShown

        function init() {
            Theme.unitsPerMm = 6.04
            Theme.textScale = 1
        }
        function make(component: Component, properties): Item {
            const item = createTemporaryObject(component, window, properties)
            verify(item)
            waitForRendering(item)
            return item
        }
        function watch(item: Item, signal: string, other: string) {
            for (const each of [spy, otherSpy]) {
                each.target = null
                each.clear()
            }
            spy.signalName = signal
            spy.target = item
            otherSpy.signalName = other
            otherSpy.target = other ? item : null
        }

        function test_entry_tells_each_change() {
            const entry = make(entryOf, {})
            watch(entry, "edited", "done")
            mouseClick(findChild(entry, "input"))
            keyClick(Qt.Key_R)
            keyClick(Qt.Key_3)
            compare(entry.text, "r3")
            compare(spy.count, 2)
            keyClick(Qt.Key_Return)
            compare(otherSpy.count, 1)
            compare(entry.text, "r3")
        }
        function test_entry_follows_its_text() {
            const entry = make(entryOf, { text: "Rum 3" })
            const input = findChild(entry, "input")
            compare(input.text, "Rum 3")
            input.forceActiveFocus()
            keyClick(Qt.Key_X)
            entry.text = "Rye 2"
            compare(input.text, "Rye 2")
        }
        function test_entry_of_lines_takes_new_ones() {
            const entry = make(entryOf, { lines: 3 })
            watch(entry, "done", "")
            findChild(entry, "input").forceActiveFocus()
            keyClick(Qt.Key_A)
            keyClick(Qt.Key_Return)
            keyClick(Qt.Key_B)
            compare(entry.text, "a\nb")
            compare(spy.count, 0)
        }
        function test_entry_takes_an_enter_that_comes_as_text() {
            const entry = make(entryOf, {})
            watch(entry, "done", "")
            findChild(entry, "input").text = "Rum\n"
            compare(entry.text, "Rum")
            compare(spy.count, 1)
            entry.text = "Rye"
            compare(findChild(entry, "input").text, "Rye", "and still follows")
        }
        function test_entry_lets_tab_through() {
            const entry = make(entryOf, {})
            const next = make(entryOf, { y: 300 })
            findChild(entry, "input").forceActiveFocus()
            keyClick(Qt.Key_Tab)
            verify(findChild(next, "input").activeFocus)
            keyClick(Qt.Key_Backtab)
            verify(findChild(entry, "input").activeFocus)
            compare(entry.text, "")
        }
        function test_entry_says_what_is_wrong() {
            const entry = make(entryOf, {})
            verify(!findChild(entry, "error").visible)
            entry.error = "That is not a number."
            verify(findChild(entry, "error").visible)
        }
        function test_entry_grows_with_a_long_placeholder() {
            const entry = make(entryOf, {})
            const low = entry.height
            entry.placeholder = "Room, rack and tier, or whatever else helps the next person to find this barrel, " +
                                "even in the dark, with wet hands and a hose in one of them."
            tryVerify(() => entry.height > low)
            entry.text = "Room 2"
            tryCompare(entry, "height", low)
        }
        function test_entry_grows_with_long_text() {
            const entry = make(entryOf, {})
            const low = entry.height
            entry.text = "A mark that is so long that it needs more lines than the field has room for when it " +
                         "stands in it, which is more than two."
            tryVerify(() => entry.height > low)
        }
    }
}
