import QtQuick
import QtTest
import Spile.Components
import Spile.TestApp
import Spile.ViewModels

// What the scan page makes of what is read: with pictures and films fed to it, and with labels that a camera sees.
AppStage {
    id: stage

    ScanFinger {
        id: finger
        name: "Scan"
        stage: stage
        fakeCamera: Qt.resolvedUrl("FakeCamera.qml")

        function test_a_fed_picture_opens_its_barrel() {
            begin()
            stage.raise("file://" + stage.test.headPicture("Rum 2"))
            settle()
            tap("bar1")
            tryCompare(scan, "state", ScanViewModel.Found, 10000)
            compare(need("hitName").text, "Rum 2")
            verify(need("hitCode").text.length === 7)
            tryCompare(stage.test.app.barrel, "name", "Rum 2", 5000)
            compare(stage.test.app.navigator.page, Navigator.Barrel)
        }
        function test_a_film_opens_its_barrel_data() {
            return [{ tag: "clear", hard: false }, { tag: "stained, in poor light", hard: true }]
        }
        function test_a_film_opens_its_barrel(row) {
            begin()
            stage.raise("file://" + stage.test.headFilm("Rum 2", row.hard))
            settle()
            tap("bar1")
            tryCompare(stage.test.app.navigator, "page", Navigator.Barrel, 20000)
            tryCompare(stage.test.app.barrel, "name", "Rum 2", 5000)
            settle()
            verify(texts().indexOf("Rum 2") >= 0 && texts().indexOf(stage.test.codeOf("Rum 2")) >= 0)
        }
        function test_a_miss_offers_other_ways_after_a_while() {
            begin()
            stage.raise("file://" + stage.test.samplePicture())
            settle()
            tap("bar1")
            need("finder")
            compare(shown("hints"), null)
            compare(shown("register"), null)
            tryVerify(() => shown("hints") !== null, 8000)
            settle()
            verify(shown("register") !== null)
            tap("fromList")
            compare(stage.test.app.navigator.page, Navigator.AllBarrels)
        }
        function test_a_wrong_barrel_is_told_and_goes_nowhere() {
            const camera = withFakeCamera()
            scan.expectBarrel(idOf(0), "Rum 1")
            see(camera, [labelOf(codeOf(1))])
            tryCompare(scan, "state", ScanViewModel.WrongBarrel)
            compare(shown("message").text, "This is Rum 2, not Rum 1.")
            verify(shown("finder") !== null) // it goes on looking
            wait(1000)
            compare(stage.test.app.navigator.page, Navigator.Scan)
        }
        function test_an_unknown_code_leads_to_registering_with_it() {
            const camera = withFakeCamera()
            see(camera, [labelOf(freeCode)])
            tryCompare(scan, "state", ScanViewModel.Unknown)
            tap("registerThis")
            compare(stage.test.app.navigator.page, Navigator.Register)
            compare(stage.test.app.registering.labelCode.length, 7)
        }
        function test_not_this_one() {
            const camera = withFakeCamera()
            see(camera, [labelOf(codeOf(1))])
            tryCompare(scan, "state", ScanViewModel.Found)
            const again = need("again")
            mouseClick(again)
            compare(scan.state, ScanViewModel.Looking)
            wait(1000)
            compare(stage.test.app.navigator.page, Navigator.Scan)
        }
    }
}
