import QtQuick
import QtTest
import Spile.Components
import Spile.TestApp
import Spile.ViewModels

// The scan page: with pictures fed to it, with cameras that fail, and by typed code.
AppStage {
    id: stage

    Finger {
        id: finger
        name: "Scan"
        stage: stage

        function begin() {
            stage.test.beginWithBarrels(3, 0)
            stage.raise("")
            settle()
        }
        // Opens the page with a camera that the test works.
        function withFakeCamera() {
            begin()
            tap("bar1")
            const finder = findChild(stage, "finder")
            finder.cameraFile = Qt.resolvedUrl("FakeCamera.qml")
            tryVerify(() => finder.camera !== null && finder.camera.active)
            settle() // the pads move
            return finder.camera
        }
        function labelOf(code) {
            return "S1TEST" + code.replace("-", "")
        }
        function codeOf(index) {
            const barrels = stage.test.app.due.barrels
            return barrels.data(barrels.index(index, 0), Qt.UserRole + 2)
        }
        readonly property ScanViewModel scan: stage.test.app?.scan ?? null
        readonly property string freeCode: "22222A" // valid in the cellar TEST, given to no barrel

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
            scan.expectBarrel(idOf(0))
            camera.codeRead(labelOf(codeOf(1)), "qr")
            tryCompare(scan, "state", ScanViewModel.WrongBarrel)
            verify(shown("message").text.indexOf("the sheet is for") > 0, shown("message").text)
            verify(shown("finder") !== null) // it goes on looking
            wait(1000)
            compare(stage.test.app.navigator.page, Navigator.Scan)
            camera.codeRead(labelOf(codeOf(0)), "qr")
            tryCompare(stage.test.app.navigator, "page", Navigator.Barrel, 5000)
        }
        function idOf(index) {
            const barrels = stage.test.app.due.barrels
            return barrels.data(barrels.index(index, 0), Qt.UserRole)
        }
        function test_an_unknown_code_leads_to_registering_with_it() {
            const camera = withFakeCamera()
            camera.codeRead(labelOf(freeCode), "qr")
            tryCompare(scan, "state", ScanViewModel.Unknown)
            tap("registerThis")
            compare(stage.test.app.navigator.page, Navigator.Register)
            compare(stage.test.app.registering.labelCode.length, 7)
        }
        function test_every_failing_camera_leaves_the_other_ways_data() {
            return [{ tag: "absent" }, { tag: "denied" }, { tag: "busy" }, { tag: "unreadable" }]
        }
        function test_every_failing_camera_leaves_the_other_ways(row) {
            const camera = withFakeCamera()
            compare(shown("problem"), null)
            camera.problem = row.tag
            const words = need("problem").text
            verify(words.length > 20)
            compare(shown("finder"), null)
            compare(shown("register") !== null, true)
            compare(shown("fromList") !== null, true)
            tap("type")
            need("keypad")
            compare(shown("problem"), null)
        }
        function test_a_missing_module_is_an_absent_camera() {
            begin()
            tap("bar1")
            const finder = findChild(stage, "finder")
            ignoreWarning(/.*NoSuchCamera.qml.*/)
            finder.cameraFile = Qt.resolvedUrl("NoSuchCamera.qml")
            tryCompare(finder, "problem", "absent")
            verify(need("problem").text.indexOf("no camera") > 0)
        }
        function test_the_camera_is_gone_with_the_page() {
            withFakeCamera()
            const finder = findChild(stage, "finder")
            tap("type")
            tryVerify(() => finder.camera === null)
            tap("back")
            tryVerify(() => finder.camera !== null)
            tap("bar0")
            compare(findChild(stage, "finder"), null)
        }
        function test_torch_and_closer_are_switched() {
            const camera = withFakeCamera()
            tap("torch")
            compare(camera.torchOn, true)
            tap("torch")
            compare(camera.torchOn, false)
            tap("closer")
            compare(camera.zoomedIn, true)
        }
        function test_not_this_one() {
            const camera = withFakeCamera()
            camera.codeRead(labelOf(codeOf(1)), "qr")
            tryCompare(scan, "state", ScanViewModel.Found)
            const again = need("again")
            mouseClick(again)
            compare(scan.state, ScanViewModel.Looking)
            wait(1000)
            compare(stage.test.app.navigator.page, Navigator.Scan)
        }
        function test_a_typed_code_opens_its_barrel() {
            withFakeCamera()
            const code = codeOf(2).replace("-", "")
            tap("type")
            for (const key of code) {
                tap("key" + key)
            }
            tryCompare(stage.test.app.navigator, "page", Navigator.Barrel, 5000)
        }
        function test_a_slip_is_named_and_what_was_meant_offered() {
            withFakeCamera()
            const right = codeOf(0).replace("-", "")
            const wrong = right.slice(0, 2) + (right[2] === "4" ? "7" : "4") + right.slice(3)
            tap("type")
            for (const key of wrong) {
                tap("key" + key)
            }
            need("typedError")
            tap("suggestion0")
            tryCompare(stage.test.app.navigator, "page", Navigator.Barrel, 5000)
        }
    }
}
