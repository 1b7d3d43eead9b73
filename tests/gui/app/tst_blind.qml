import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// While a sheet is open, nothing that was scored before is anywhere in the item tree.
AppStage {
    id: stage

    Finger {
        name: "Blind"
        stage: stage

        function openSheet(width, height) {
            stage.width = width
            stage.height = height
            stage.test.beginWithBarrels(2, 3)
            stage.raise("")
            settle()
            stage.test.app.openBarrel(stage.test.app.due.barrels.data(stage.test.app.due.barrels.index(0, 0), Qt.UserRole))
            settle()
        }
        function test_nothing_of_before_data() {
            return [{ tag: "phone", w: 390, h: 844 }, { tag: "two columns", w: 800, h: 900 }, { tag: "three columns", w: 1280, h: 800 }]
        }
        function test_nothing_of_before(data) {
            openSheet(data.w, data.h)
            verify(texts().includes("vanilla 5"), "the earlier scores are shown before a sheet is open: " + texts())
            stage.test.app.people.choose(0)
            stage.test.app.draw()
            verify(!texts().includes("vanilla 5"), "hidden at once, before anything is read")
            settle()
            verify(!texts().includes("vanilla 5"), "nor beside the draw")
            stage.test.app.goBack()
            settle()
            verify(texts().includes("vanilla 5"))
            stage.test.app.taste()
            settle()
            const tasting = stage.test.app.tasting
            while (!tasting.last) {
                const all = texts()
                for (const told of ["vanilla 5", "vanilla 4", "vanilla 3", "oak 4", "early days"]) {
                    verify(!all.includes(told), told + " is shown on " + tasting.title)
                }
                tasting.next()
                settle()
            }
            // Nor on the barrel's page, as long as the sheet is open.
            stage.test.app.openBarrel(stage.test.app.barrel.barrelId)
            settle()
            verify(stage.test.app.barrel.scoresHidden)
            verify(!texts().includes("vanilla 5"))
            verify(!texts().includes("early days"))
            // They come back once it is closed.
            tasting.close()
            settle()
            stage.test.app.openBarrel(stage.test.app.barrel.barrelId)
            settle()
            verify(texts().includes("vanilla 5"))
        }
    }
}
