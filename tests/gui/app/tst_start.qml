import QtQuick
import QtTest
import Spile.Screens
import Spile.TestApp
import Spile.ViewModels

// What a start shows and loads: nothing of the camera, and plain words if the cellar cannot be opened.
AppStage {
    id: stage

    Component {
        id: openingPage
        OpeningPage {
            anchors.fill: parent
            app: stage.test.app
            broughtUp: 0.25
        }
    }

    Finger {
        name: "Start"
        stage: stage

        function test_1_the_camera_is_loaded_by_the_pages_that_need_it() {
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
            compare(stage.test.mapped("libQt6Multimedia"), 0)
            tap("bar2")
            compare(stage.test.mapped("libQt6Multimedia"), 0)
            tap("bar1")
            tryVerify(() => stage.test.mapped("libQt6Multimedia") > 0, 10000)
        }
        function test_what_takes_longer_is_told() {
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
            const page = createTemporaryObject(openingPage, stage)
            verify(!page.visible, "a moment is not told")
            tryVerify(() => page.visible, 3000)
            compare(shown("broughtUp", page).value, 0.25)
        }
        function test_an_empty_app_offers_two_ways() {
            stage.test.beginEmpty()
            stage.raise("")
            settle()
            compare(stage.test.app.stage, AppViewModel.FirstRun)
            verify(shown("registerFirst"))
            tap("takeInFirst")
            verify(texts().includes("No day file lies in the usual places"))
            tap("back")
            verify(shown("registerFirst"))
        }
        function test_a_phone_joins_with_a_day_file() {
            stage.test.beginWithBarrels(2, 1)
            stage.raise("")
            settle()
            stage.test.app.openDayFile()
            settle()
            tap("write")
            tap("target0")
            const file = stage.test.carried(stage.test.stickFiles()[0])
            stage.lower()
            stage.test.beginEmpty()
            stage.raise("")
            settle()
            tap("takeInFirst")
            write("path", file)
            tap("takePath")
            compare(stage.test.app.takeIn.path, file)
            compare(stage.test.app.takeIn.error, "")
            compare(stage.test.app.stage, AppViewModel.Ready)
            verify(!stage.test.app.joining.admitted)
            compare(stage.test.app.joining.ownCode.length, 34)
            for (const group of stage.test.app.joining.ownCode.split("-")) {
                verify(texts().includes(group), group)
            }
            tap("back")
            tap("bar0")
            compare(need("rows").count, 2)
        }
        function test_where_no_day_file_lies_it_is_said_where_it_was_looked() {
            stage.test.beginEmpty()
            stage.raise("")
            settle()
            stage.test.app.openTakeIn()
            settle()
            verify(/^Looked in .+ and on memory sticks for files whose names end in \.spile\.$/.test(need("lookedIn").text),
                   need("lookedIn").text)
        }
        function test_files_of_others_and_damaged_ones_are_refused() {
            stage.test.beginWithBarrels(2, 1)
            stage.raise("")
            settle()
            stage.test.app.openDayFile()
            settle()
            tap("write")
            tap("target0")
            const foreign = stage.test.carried(stage.test.stickFiles()[0])
            stage.lower()
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
            stage.test.app.openTakeIn()
            settle()
            for (const refused of [{ file: foreign, says: ".spile: The file is of another cellar" }, { file: stage.test.samplePicture(), says: "Nothing" },
                                   { file: "/nowhere.spile", says: "nowhere.spile is not there" }]) {
                stage.test.app.takeIn.path = refused.file
                tap("takePath")
                verify(stage.test.app.takeIn.error.includes(refused.says), stage.test.app.takeIn.error)
                compare(stage.test.app.takeIn.result, "")
            }
            stage.test.app.navigator.go(Navigator.Due)
            settle()
            compare(need("rows").count, 1)
        }
        function test_a_cellar_that_cannot_be_opened_says_what_is_safe() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.refuseDisk()
            stage.test.restart()
            stage.raise("")
            settle()
            compare(stage.test.app.stage, AppViewModel.Broken)
            verify(texts().includes("is safe"), texts())
            stage.test.mendDisk()
            tap("tryAgain")
            compare(stage.test.app.stage, AppViewModel.Ready)
        }
    }
}
