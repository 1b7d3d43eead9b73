import QtQuick
import QtTest
import Spile.Components
import Spile.TestApp
import Spile.ViewModels

// After the scan the app goes where the work is; and before work, a scan to be sure.
AppStage {
    id: stage

    ScanFinger {
        id: finger
        name: "ScanWork"
        stage: stage
        fakeCamera: Qt.resolvedUrl("FakeCamera.qml")

        function test_the_step_that_is_due_stands_first() {
            const camera = withFakeCamera()
            stage.test.app.people.choose(0)
            see(camera, [labelOf(codeOf(0))])
            tryCompare(stage.test.app.navigator, "page", Navigator.Barrel, 5000)
            settle()
            compare(need("next").text, "Draw and taste")
            tap("next")
            compare(stage.test.app.navigator.page, Navigator.Draw)
        }
        function test_an_open_tasting_sheet_opens_at_once() {
            begin()
            stage.test.app.people.choose(0)
            settle()
            stage.test.app.openBarrel(idOf(0))
            settle()
            stage.test.app.taste()
            tryCompare(stage.test.app.navigator, "page", Navigator.Taste)
            scanned(0)
            tryCompare(stage.test.app.navigator, "page", Navigator.Taste, 5000)
            compare(stage.test.app.tasting.barrelName, "Rum 1")
            scanned(1) // nothing is open on this one
            tryCompare(stage.test.app.barrel, "name", "Rum 2", 5000)
            settle()
            compare(stage.test.app.navigator.page, Navigator.Barrel)
        }
        function test_an_open_work_sheet_opens_at_once_unless_it_was_stopped() {
            begin()
            stage.test.app.people.choose(0)
            settle()
            stage.test.app.openBarrel(idOf(0))
            settle()
            stage.test.app.openSheetsOfBarrel()
            settle()
            tap("sheet0")
            tryCompare(stage.test.app.navigator, "page", Navigator.Steps)
            const title = stage.test.app.work.title
            scanned(0)
            tryCompare(stage.test.app.navigator, "page", Navigator.Steps, 5000)
            tap("stop")
            scanned(0)
            compare(stage.test.app.navigator.page, Navigator.Barrel)
            compare(need("next").text, "Go on: " + title)
            tap("next")
            tryCompare(stage.test.app.navigator, "page", Navigator.Steps, 5000)
            compare(stage.test.app.work.title, title)
        }
        function test_the_head_can_be_scanned_to_be_sure_before_a_draw() {
            begin()
            stage.test.app.people.choose(0)
            settle()
            stage.test.app.openBarrel(idOf(0))
            settle()
            stage.test.app.draw()
            settle()
            verify(need("record").enabled) // it holds up nothing
            tap("sure")
            compare(stage.test.app.navigator.page, Navigator.ScanHead)
            compare(shown("register"), null)
            compare(shown("fromList"), null)
            scan.offer([labelOf(codeOf(1))], ["qr"])
            tryCompare(scan, "state", ScanViewModel.WrongBarrel)
            compare(stage.test.app.navigator.page, Navigator.ScanHead)
            scan.offer([labelOf(codeOf(0))], ["qr"])
            tryCompare(stage.test.app.navigator, "page", Navigator.Draw, 5000)
            settle()
            compare(need("sure").name, "The head says Rum 1")
            compare(need("sure").enabled, false)
            tap("back")
            stage.test.app.draw()
            settle()
            compare(need("sure").name, "Scan the head to be sure") // each time anew
            tap("sure")
            tap("back")
            compare(stage.test.app.navigator.page, Navigator.Draw)
        }
        function test_the_head_can_be_scanned_at_the_first_step_of_a_sheet() {
            begin()
            stage.test.app.people.choose(0)
            settle()
            stage.test.app.openBarrel(idOf(0))
            settle()
            stage.test.app.openSheetsOfBarrel()
            settle()
            tap("sheet0")
            tap("sure")
            scan.offer([labelOf(codeOf(0))], ["qr"])
            tryCompare(stage.test.app.navigator, "page", Navigator.Steps, 5000)
            settle()
            compare(need("sure").enabled, false)
            tap("skip")
            tap("chip0", need("skipReasons"))
            settle()
            compare(shown("sure"), null)
        }
    }
}
