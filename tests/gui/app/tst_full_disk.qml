import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The disk is full, page by page: what is kept for that is given up and all is saved once; without it the page says
// what to do, nothing is lost, and once there is room the same tap saves it.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    Finger {
        name: "FullDisk"
        stage: stage

        // How a page is opened and filled in, which pad saves, what stands on it, and how many records that makes.
        readonly property var pages: ({
            draw: { open: () => openDraw(), save: "record", typed: () => stage.app.drawing.volume, adds: 1 },
            sheet: { open: () => openSheetToItsEnd(), save: "close", typed: () => stage.app.tasting.summary, adds: 1 },
            tap: { open: () => openSheet(), save: "rung5", typed: () => stage.app.tasting.value, adds: 0,
                   saved: () => compare(stage.app.tasting.value, 5) },
            gauge: { open: () => openGauge(), save: "record", typed: () => recordTyped(), adds: 1 },
            fill: { open: () => openFill(), save: "record", typed: () => recordTyped(), adds: 2 }, // and its beer
            correction: { open: () => openCorrection(), save: "more0", typed: () => direction(), adds: 1,
                          saved: () => compare(direction(), ComparingViewModel.More) },
            takeBack: { open: () => openTakeBack(), save: "takeBack0", typed: () => "", adds: 1 },
            handOut: { open: () => openDayFile(), save: "write", typed: () => stage.app.dayFile.fileName, adds: 0,
                       saved: () => verify(stage.app.dayFile.fileName.length > 0) },
            takeIn: { open: () => openTakeIn(), save: "takePath", typed: () => stage.app.takeIn.path, adds: 1,
                      saved: () => compare(need("result").text, "1 record(s) added.") }
        })

        function begin() {
            stage.test.beginWithBarrels(1, 1)
            stage.test.setFreeBytes(1e8) // too little for the app to keep room by itself
            stage.raise("")
            settle()
            stage.app.people.choose(0)
        }
        function openDraw() {
            tap("row0")
            tap("draw")
            tap("more", need("volume"))
        }
        function openSheet() {
            tap("row0")
            tap("taste")
        }
        function openSheetToItsEnd() {
            openSheet()
            tap("rung7")
            toStep(TastingViewModel.Close)
        }
        function toStep(step) {
            while (stage.app.tasting.step !== step) {
                tap("next")
            }
        }
        function openGauge() {
            tap("row0")
            tap("gauge")
            tap("more", need("volume"))
            tap("chip0", need("choices"))
            write("note", "seen twice")
        }
        function openFill() {
            tap("row0")
            stage.app.openRecord(RecordViewModel.Empty)
            tap("chip0", need("choices"))
            tap("record")
            stage.app.openRecord(RecordViewModel.Fill)
            settle()
            write("newChoice", "Long Watch")
        }
        function recordTyped() {
            const record = stage.app.record
            return [record.volume, record.choice, record.newChoice, record.note].join("|")
        }
        function openCorrection() {
            openSheetToItsEnd()
            tap("close")
            tap("right0")
        }
        function direction() {
            const rows = stage.app.comparing.attributes
            return rows.data(rows.index(0, 0), Qt.UserRole + 3)
        }
        function openTakeBack() {
            openDraw()
            tap("record")
            stage.app.navigator.go(Navigator.Today)
            settle()
        }
        function openDayFile() {
            tap("bar2")
            tap("dayFile")
        }
        function openTakeIn() {
            stage.lower()
            stage.test.phoneAheadOnStick("Phone of Kim", 0)
            stage.raise("")
            settle()
            stage.app.openTakeIn()
            settle()
            write("path", stage.test.stickFiles()[0])
        }
        function test_saves_once_data() {
            const rows = []
            for (const name in pages) {
                rows.push({ tag: name + ", room was kept", name: name, kept: true })
                rows.push({ tag: name + ", no room", name: name, kept: false })
            }
            return rows
        }
        function test_saves_once(row) {
            const page = pages[row.name]
            begin()
            page.open()
            const at = stage.app.navigator.page, typed = page.typed(), before = stage.test.recordCount()
            if (row.kept) {
                stage.test.keepBallast()
            }
            stage.test.fillDisk()
            tap(page.save)
            if (!row.kept) {
                seen("storage is full")
                seen("Free some space")
                compare(stage.app.navigator.page, at)
                compare(page.typed(), typed)
                compare(stage.test.recordCount(), before)
                stage.test.mendDisk()
                tap(page.save)
            }
            verify(!texts().includes("storage is full"), texts())
            if (page.saved) {
                page.saved()
            }
            compare(stage.test.recordCount(), before + page.adds)
            stage.lower()
            stage.test.restart()
            tryVerify(() => stage.test.isSettled())
            compare(stage.test.recordCount(), before + page.adds)
        }
        // The words are on the window, and on it whole.
        function seen(words) {
            const item = withText(stage, words)
            verify(item, words + " is not said: " + texts())
            for (let around = item.parent; around; around = around === stage ? null : around.parent) {
                const top = item.mapToItem(around, 0, 0).y
                verify(!(around.clip || around === stage) || top >= 0 && top + item.height <= around.height,
                       words + " is out of sight")
            }
        }
        function withText(item, words) {
            if (!item.visible) {
                return null
            }
            if (String(item.text ?? "").includes(words) && item.children.length === 0) {
                return item
            }
            for (let i = 0; i < item.children.length; ++i) {
                const found = withText(item.children[i], words)
                if (found) {
                    return found
                }
            }
            return null
        }
    }
}
