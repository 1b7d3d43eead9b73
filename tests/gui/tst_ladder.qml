import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

Item {
    id: window
    width: 390
    height: 844

    Component {
        id: sheet
        Ladder {
            x: 18
            width: 354
            words: ["dominant", "strong", "clear", "slight", "none"]
            onChosen: step => value = step
            onNudged: by => value += by
        }
    }
    SignalSpy { id: chosen; signalName: "chosen" }
    SignalSpy { id: nudged; signalName: "nudged" }

    TestCase {
        name: "Ladder"
        when: windowShown

        property Ladder ladder

        function init() {
            Theme.unitsPerMm = 6.04
            ladder = createTemporaryObject(sheet, window)
            chosen.target = ladder
            nudged.target = ladder
            chosen.clear()
            nudged.clear()
            waitForRendering(ladder)
        }
        function pad(name: string): Pad {
            return findChild(ladder, name)
        }
        function tap(name: string) {
            wait(100) // no splash
            const item = pad(name)
            const touch = touchEvent(item)
            touch.press(0, item).commit()
            wait(60)
            touch.release(0, item).commit()
        }

        function test_starts_without_a_score() {
            compare(ladder.value, 0)
            for (const name of ["rung9", "rung7", "rung5", "rung3", "rung1"]) {
                verify(!pad(name).chosen && !pad(name).marked, name)
            }
            verify(!pad("less").enabled)
            verify(!pad("more").enabled)
            tap("more")
            compare(nudged.count, 0)
        }
        function test_each_value_takes_two_taps_at_most_data() {
            const rows = []
            for (let value = 1; value <= 9; ++value) {
                rows.push({ tag: value.toString(), value: value })
            }
            return rows
        }
        function test_each_value_takes_two_taps_at_most(data) {
            const even = data.value % 2 === 0
            tap("rung" + (even ? data.value + 1 : data.value))
            if (even) {
                tap("less")
            }
            compare(ladder.value, data.value)
        }
        function test_a_rung_shows_that_it_is_chosen() {
            ladder.value = 7
            verify(pad("rung7").chosen)
            verify(pad("rung7").checked)
            verify(!pad("rung9").chosen && !pad("rung9").marked)
        }
        function test_a_value_between_marks_both_rungs() {
            ladder.value = 8
            for (const name of ["rung9", "rung7"]) {
                verify(pad(name).marked && !pad(name).chosen, name)
            }
            verify(!pad("rung5").marked)
        }
        function test_not_judged_is_no_score() {
            ladder.value = 7
            ladder.notJudged = true
            verify(!pad("rung7").chosen)
            verify(!pad("less").enabled)
        }
        function test_at_the_ends_the_nudge_is_still_told() {
            ladder.value = 9
            tap("more")
            compare(nudged.count, 1)
            compare(nudged.signalArguments[0][0], 1)
        }
        function test_the_word_comes_before_the_number() {
            compare(pad("rung7").name, "strong, 7")
        }
        function test_rungs_run_from_the_most_to_the_least() {
            const names = ["rung9", "rung7", "rung5", "rung3", "rung1", "less"]
            const tops = names.map(name => pad(name).mapToItem(ladder, 0, 0).y)
            compare(tops, tops.slice().sort((a, b) => a - b))
        }
        function test_a_whole_score_by_keys() {
            pad("rung9").forceActiveFocus(Qt.TabFocusReason)
            keyClick(Qt.Key_Tab)
            keyClick(Qt.Key_Space)
            compare(ladder.value, 7)
            pad("less").forceActiveFocus(Qt.TabFocusReason)
            keyClick(Qt.Key_Tab)
            verify(pad("more").activeFocus)
            keyClick(Qt.Key_Return)
            compare(ladder.value, 8)
        }
    }
}
