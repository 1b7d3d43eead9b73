import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The photo page: taking, keeping, taking back, and cameras and disks that fail.
AppStage {
    id: stage

    Finger {
        name: "Photo"
        stage: stage

        readonly property PhotoViewModel photo: stage.test.app?.photo ?? null
        readonly property string noRoom: "Photo not kept: storage is full. All that was kept before is safe. Free some space, then take it again."

        function begin() {
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
        }
        function open() {
            const barrels = stage.test.app.due.barrels
            stage.test.app.openBarrel(barrels.data(barrels.index(0, 0), Qt.UserRole))
            settle()
            stage.test.app.photograph()
            settle()
        }
        function withFakeCamera() {
            begin()
            open()
            const finder = findChild(stage, "finder")
            finder.cameraFile = Qt.resolvedUrl("FakeCamera.qml")
            tryVerify(() => finder.camera !== null && finder.camera.active)
            settle() // the pads move
            return finder.camera
        }
        function test_a_photo_is_kept_shown_and_taken_back() {
            begin()
            stage.raise("file://" + stage.test.samplePicture())
            settle()
            open()
            compare(shown("picture"), null)
            tap("chip1", need("purposes"))
            compare(photo.purpose, 1)
            tap("take")
            tryVerify(() => photo.kept, 10000)
            need("picture")
            compare(shown("finder"), null)
            tap("undo")
            tryVerify(() => !photo.kept)
            tap("take")
            tryVerify(() => photo.kept, 10000)
            tap("another")
            need("finder")
        }
        function test_every_failing_camera_says_so_and_takes_nothing_data() {
            return [{ tag: "absent" }, { tag: "denied" }, { tag: "busy" }, { tag: "unreadable" }]
        }
        function test_every_failing_camera_says_so_and_takes_nothing(row) {
            const camera = withFakeCamera()
            camera.problem = row.tag
            verify(need("problem").text.length > 20)
            compare(shown("take"), null)
            tap("back")
            compare(stage.test.app.navigator.page, Navigator.Barrel)
        }
        function test_a_camera_that_gives_none_can_be_asked_again() {
            const camera = withFakeCamera()
            tap("take")
            verify(need("error").text.indexOf("no photo") > 0)
            compare(camera.photosAsked, 1)
            tap("take")
            compare(camera.photosAsked, 2)
        }
        function test_a_full_storage_is_told_with_what_is_safe() {
            const camera = withFakeCamera()
            stage.test.setFreeBytes(1000)
            tap("take")
            compare(need("error").text, noRoom)
            compare(camera.photosAsked, 0)
        }
        function takesOnFullDisk() {
            begin()
            stage.raise("file://" + stage.test.samplePicture())
            settle()
            open()
            return stage.test.recordCount()
        }
        // A photo needs room beside what is kept for records.
        function test_a_photo_leaves_the_room_that_is_kept_for_records() {
            const before = takesOnFullDisk()
            stage.test.keepBallast()
            stage.test.setFreeBytes(33000000)
            tap("take")
            compare(need("error").text, noRoom)
            compare(stage.test.recordCount(), before)
            stage.test.setFreeBytes(1e9)
            tap("take")
            tryVerify(() => photo.kept, 10000)
            compare(stage.test.recordCount(), before + 1)
        }
        function test_the_record_of_a_photo_gets_the_room_that_was_kept() {
            const before = takesOnFullDisk()
            stage.test.keepBallast()
            stage.test.fillDiskForRecords()
            tap("take")
            tryVerify(() => photo.kept, 10000)
            compare(shown("error"), null)
            compare(stage.test.recordCount(), before + 1)
        }
        function test_without_any_room_the_photo_is_taken_again_once_there_is_some() {
            const before = takesOnFullDisk()
            stage.test.fillDisk()
            tap("take")
            compare(need("error").text, noRoom)
            compare(stage.test.recordCount(), before)
            stage.test.mendDisk()
            tap("take")
            tryVerify(() => photo.kept, 10000)
            compare(stage.test.recordCount(), before + 1)
        }
    }
}
