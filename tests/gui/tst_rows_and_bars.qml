import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

Item {
    id: window
    width: 390
    height: 844

    Rectangle {
        anchors.fill: parent
        color: Theme.colours.ground0
    }
    Component {
        id: rowOf
        ListRow { width: 354; title: "Rum 3" }
    }
    Component {
        id: waitOf
        WaitRows { width: 354 }
    }
    Component {
        id: undoOf
        UndoBar { width: 390; text: "Vanilla 7 kept" }
    }
    Component {
        id: bannerOf
        Banner { width: 354; text: "Vent it first." }
    }
    Component {
        id: barOf
        PadBar { width: 390; labels: ["Due", "Scan", "Today"]; glyphs: [Glyph.Due, Glyph.Scan, Glyph.Today] }
    }
    SignalSpy { id: spy }

    TestCase {
        name: "RowsAndBars"
        when: windowShown

        function init() {
            Theme.unitsPerMm = 6.04
            Theme.palette = Theme.Dark
        }
        function make(component: Component, properties): Item {
            const item = createTemporaryObject(component, window, properties)
            verify(item)
            waitForRendering(item)
            return item
        }
        function watch(item: Item, signal: string) {
            spy.target = null
            spy.clear()
            spy.signalName = signal
            spy.target = item
        }

        function test_whole_row_opens() {
            const row = make(rowOf, { code: "7K2-QFM", firstLine: "Taste", secondLine: "Room 2",
                                      standingWord: "Today" })
            watch(row, "opened")
            mouseClick(row, 5, 5)
            compare(spy.count, 1)
            compare(row.name, "Rum 3, 7K2-QFM, Today, Taste, Room 2")
        }
        function test_row_grows_with_its_title() {
            const row = make(rowOf, {})
            compare(row.height, Theme.row)
            row.title = "A mark that takes more than two lines at the size that titles of rows have here"
            tryVerify(() => row.height > Theme.row)
        }
        function test_rows_that_wait_come_late() {
            const rows = make(waitOf, {})
            verify(!rows.visible)
            tryCompare(rows, "visible", true)
            rows.waiting = false
            verify(!rows.visible)
        }
        function test_undo_is_told() {
            const bar = make(undoOf, { shown: true })
            watch(bar, "undone")
            mouseClick(findChild(bar, "undo"))
            compare(spy.count, 1)
            bar.shown = false
            verify(!bar.visible)
        }
        function test_banner_acts() {
            const banner = make(bannerOf, { padText: "Vented" })
            watch(banner, "acted")
            mouseClick(findChild(banner, "bannerPad"))
            compare(spy.count, 1)
            banner.padText = ""
            verify(!findChild(banner, "bannerPad").visible)
        }
        function test_caution_differs_from_a_note_without_colour() {
            const low = make(bannerOf, {}).height
            const caution = make(bannerOf, { kind: Banner.Caution })
            tryVerify(() => caution.height > low, 1000, "it has a line with its word")
            const refused = make(bannerOf, { y: 300, kind: Banner.Refused })
            tryCompare(refused, "height", caution.height)
            verify(!grabImage(caution).equals(grabImage(refused)))
        }
        function test_bar_keeps_its_margins() {
            const bar = make(barOf, {})
            const first = findChild(bar, "bar0")
            const last = findChild(bar, "bar2")
            compare(first.mapToItem(bar, 0, 0).x, Theme.margin)
            compare(last.mapToItem(bar, last.width, 0).x, bar.width - Theme.margin)
            compare(findChild(bar, "bar1").x - first.width, Theme.gap)
        }
        function test_bar_tells_which() {
            const bar = make(barOf, { current: 2 })
            watch(bar, "chosen")
            verify(findChild(bar, "bar1").act)
            verify(findChild(bar, "bar2").marked)
            mouseClick(findChild(bar, "bar0"))
            compare(spy.signalArguments[0][0], 0)
        }
    }
}
