import QtQuick
import QtTest
import Spile.Components
import Spile.TestApp
import Spile.ViewModels

// The camera on the scan page: several labels in view, what would help, focus, torch, and cameras that fail.
AppStage {
    id: stage

    ScanFinger {
        id: finger
        name: "ScanCamera"
        stage: stage
        fakeCamera: Qt.resolvedUrl("FakeCamera.qml")

        function test_several_in_view_are_offered_and_one_tap_takes_another() {
            const camera = withFakeCamera()
            see(camera, [labelOf(codeOf(0)), labelOf(codeOf(2))])
            tryCompare(scan, "state", ScanViewModel.Found)
            compare(need("hitName").text, "Rum 1")
            compare(need("beside0").text, "Rum 3")
            compare(need("beside0").hint, codeOf(2))
            wait(1000)
            compare(stage.test.app.navigator.page, Navigator.Scan) // there is time to choose
            tap("beside0")
            compare(stage.test.app.navigator.page, Navigator.Barrel)
            tryCompare(stage.test.app.barrel, "name", "Rum 3", 5000)
        }
        function test_of_several_in_view_the_nearest_is_taken() {
            const camera = withFakeCamera()
            see(camera, [labelOf(codeOf(0)), labelOf(codeOf(2))])
            tap("choose")
            tryCompare(stage.test.app.barrel, "name", "Rum 1", 5000)
        }
        function test_what_would_help_is_said_and_the_torch_is_brought_forward() {
            const camera = withFakeCamera()
            camera.nothingRead("light")
            compare(shown("hints"), null) // a frame alone says nothing
            tryCompare(scan, "advice", ScanViewModel.Light, 3000)
            const hints = need("hints")
            compare(hints.text, "Too dark: switch on the torch.")
            verify(stage.test.allNames(stage).indexOf("switch on the torch") > 0)
            compare(need("torch").act, true)
            tap("torch")
            compare(need("torch").act, false)
            compare(hints.text, "Still too dark: go closer.")
            camera.torchPossible = false
            camera.torchOn = false
            said(camera, "wipe", "Wipe the label.")
            said(camera, "still", "Hold still.")
            said(camera, "closer", "Go closer.")
            said(camera, "", "Not read yet. Go closer, give it light, wipe the label.")
        }
        function test_a_tap_focuses_there_and_shows_where() {
            const camera = withFakeCamera()
            const finder = need("finder")
            compare(shown("focused"), null)
            mouseClick(finder, finder.width / 4, finder.height / 2)
            fuzzyCompare(camera.focusedOn.x, 0.25, 0.01)
            fuzzyCompare(camera.focusedOn.y, 0.5, 0.01)
            const ring = need("focused")
            fuzzyCompare(ring.x + ring.width / 2, finder.width / 4, 1)
            fuzzyCompare(ring.y + ring.height / 2, finder.height / 2, 1)
            tryVerify(() => shown("focused") === null, 3000)
            camera.focusPossible = false
            mouseClick(finder, finder.width / 2, finder.height / 4)
            compare(shown("focused"), null)
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
    }
}
