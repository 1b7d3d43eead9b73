import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// An open sheet: order, undo without limit, restarts.
AppStage {
    id: stage

    readonly property TastingViewModel tasting: stage.test.app ? stage.test.app.tasting : null

    Finger {
        name: "Sheet"
        stage: stage

        function openSheet() {
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
            stage.test.app.people.choose(0)
            tap("row0")
            stage.test.app.taste()
            settle()
            compare(stage.test.app.navigator.page, Navigator.Taste)
        }
        function order() {
            const names = []
            while (stage.tasting.step === TastingViewModel.Attribute) {
                names.push(stage.tasting.title)
                stage.tasting.next()
                settle()
            }
            while (!stage.tasting.first) {
                stage.tasting.previous()
                settle()
            }
            return names
        }
        function test_order_is_kept_and_rotates() {
            openSheet()
            const first = order()
            compare(first.length, 9)
            stage.lower()
            stage.test.restart()
            stage.raise("")
            settle()
            tap("goOn0")
            compare(order(), first)
            stage.tasting.close()
            settle()
            stage.test.app.taste()
            settle()
            const second = order()
            verify(second.join() !== first.join(), "the order does not rotate")
            compare(second.slice().sort(), first.slice().sort())
        }
        function test_undo_after_next_back_and_restart() {
            openSheet()
            const title = stage.tasting.title
            tap("rung7")
            tap("more", need("ladder"))
            compare(stage.tasting.value, 8)
            tap("next")
            verify(!shown("pageDown"), "the ladder fits the page")
            tap("rung3")
            tap("undo")
            compare(stage.tasting.value, 0)
            tap("undo") // after Next: it goes back to what is taken back
            compare(stage.tasting.title, title)
            compare(stage.tasting.value, 7)
            stage.lower()
            stage.test.restart()
            stage.raise("")
            settle()
            tap("goOn0")
            tap("undo")
            compare(stage.tasting.title, title)
            compare(stage.tasting.value, 0)
            verify(!stage.tasting.canUndo, "the order of attributes is no tap")
            verify(!need("undo").enabled)
        }
        function test_back_loses_nothing() {
            openSheet()
            tap("rung9")
            for (const way of ["pad", "key"]) {
                if (way === "pad") {
                    tap("back")
                } else {
                    keyClick(Qt.Key_Escape)
                    settle()
                }
                compare(stage.test.app.navigator.page, Navigator.Barrel, way)
                tap("next") // go on tasting
                compare(stage.tasting.value, 9, way)
            }
            keyClick(Qt.Key_Back)
            settle()
            compare(stage.test.app.navigator.page, Navigator.Barrel)
        }
        function test_skipping_is_a_value() {
            openSheet()
            tap("next")
            tap("previous")
            verify(stage.tasting.notJudged)
            compare(stage.tasting.value, 0)
        }
        function test_resizing_keeps_the_sheet() {
            openSheet()
            tap("rung7")
            stage.width = 1280
            stage.height = 800
            settle()
            compare(stage.tasting.value, 7)
            verify(need("ladder").visible)
            stage.width = 390
            stage.height = 844
            settle()
            compare(stage.tasting.value, 7)
            compare(need("ladder").value, 7)
        }
        function test_put_aside_and_found_again() {
            openSheet()
            tap("rung7")
            stage.lower()
            stage.test.restart()
            stage.raise("")
            settle()
            tap("putAside")
            compare(stage.test.app.navigator.page, Navigator.Due)
            tap("bar2")
            tap("openSheets")
            tap("goOn0")
            compare(stage.tasting.value, 7)
        }
        function test_thrown_away_only_by_holding() {
            openSheet()
            while (!stage.tasting.last) {
                stage.tasting.next()
                settle()
            }
            const pad = need("discard")
            bringIntoView(pad)
            const touch = touchEvent(pad)
            touch.press(0, pad).commit()
            wait(300)
            touch.release(0, pad).commit()
            settle()
            verify(stage.tasting.open)
            touch.press(0, pad).commit()
            wait(900)
            touch.release(0, pad).commit()
            settle()
            verify(!stage.tasting.open)
        }
    }
}
