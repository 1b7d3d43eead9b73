import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// Long lists: a page at a time, by touch and by the page pads; searching and filtering.
AppStage {
    id: stage

    Finger {
        name: "List"
        stage: stage

        function test_two_thousand_barrels() {
            stage.test.beginWithBarrels(2000, 0)
            stage.raise("")
            settle()
            const list = need("rows")
            verify(list.count > 0 && list.count < 2000, "the list is read a page at a time: " + list.count)
            const y0 = list.contentY
            const touch = touchEvent(list)
            touch.press(0, list, 150, 400).commit()
            for (let i = 1; i <= 12; ++i) {
                wait(16)
                touch.move(0, list, 150, 400 - i * 20).commit()
            }
            touch.release(0, list, 150, 160).commit()
            tryVerify(() => list.contentY > y0 + 100, 3000)
            tryVerify(() => !list.moving, 5000)
            const y1 = list.contentY
            tap("pageDown")
            verify(list.contentY > y1 + list.height / 2)
            const before = list.count
            for (let page = 0; page < 30 && list.count === before; ++page) {
                tap("pageDown")
            }
            verify(list.count > before, "more rows come at the end")
        }
        function test_search_and_filter() {
            stage.test.beginWithBarrels(12, 0)
            stage.raise("")
            settle()
            tap("allBarrels")
            const rows = stage.test.app.barrels.barrels
            compare(rows.rowCount(), 12)
            compare(rows.data(rows.index(2, 0), Qt.UserRole + 1), "Rum 3")
            compare(rows.data(rows.index(11, 0), Qt.UserRole + 1), "Rum 12")
            write("search", "RUM 1")
            tryVerify(() => rows.rowCount() === 4, 3000, "Rum 1, 10, 11, 12: " + rows.rowCount())
            stage.test.app.barrels.search = "night"
            settle()
            compare(rows.rowCount(), 12)
            tap("chip2", need("filters"))
            compare(rows.rowCount(), 0)
            verify(texts().includes("No barrel is like that."))
            tap("emptyPad")
            compare(rows.rowCount(), 12)
        }
    }
}
