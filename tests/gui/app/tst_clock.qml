import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A clock is wrong: this device's own, one that was set, and that of a phone whose day file comes from the future.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    Finger {
        name: "Clock"
        stage: stage

        function show() {
            stage.raise("")
            settle()
            stage.app.navigator.go(Navigator.Today)
            settle()
        }
        function detail(index) {
            const rows = stage.app.today.journal
            return rows.data(rows.index(index, 0), Qt.UserRole + 2)
        }
        function what(index) {
            const rows = stage.app.today.journal
            return rows.data(rows.index(index, 0), Qt.UserRole + 1)
        }
        function when(index) {
            const rows = stage.app.today.journal
            return rows.data(rows.index(index, 0), Qt.UserRole)
        }
        function test_a_clock_that_was_set_is_told_and_set_right() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.addPhone("Phone of Kim") // which is a record of this device
            show()
            compare(shown("clockDoubt"), null)
            stage.test.jumpClock(3 * 60)
            show()
            const doubt = need("clockDoubt")
            compare(doubt.text, "This device's clock was set forward by 3 hour(s) since the last record.")
            tap("bannerPad", doubt)
            tryCompare(stage.app.navigator, "page", Navigator.Clock)
            verify(stage.app.clock.own)
            const before = stage.app.clock.time
            tap("less", need("hour"))
            tap("less", need("hour"))
            tap("less", need("hour"))
            verify(stage.app.clock.time !== before)
            tap("save")
            tryCompare(stage.app.navigator, "page", Navigator.Today)
            compare(stage.app.notice.text, "Kept. Set this device's own clock too.")
            tryVerify(() => shown("clockDoubt") === null) // the observation itself is the newest record
            tryVerify(() => what(0) === "Phone: Clock looked at", 5000, what(0))
            compare(detail(0), "it was ahead by 3 hour(s)")
            stage.app.today.takeBackAt(0)
            settle()
            tryVerify(() => shown("clockDoubt") === null)
            stage.app.clock.openDoubt()
            settle()
            compare(shown("known"), null) // taken back, as on the page of the clock
        }
        function test_a_record_says_what_its_clock_said() {
            stage.test.beginWithBarrels(1, 1)
            stage.test.jumpClock(26 * 60)
            show()
            verify(detail(0).indexOf("set right") < 0)
            stage.app.clock.openDoubt()
            settle()
            tryCompare(stage.app.navigator, "page", Navigator.Clock)
            tap("moreTen", need("day"))
            tap("save")
            tryCompare(stage.app.navigator, "page", Navigator.Today)
            tryVerify(() => detail(1).indexOf("; set right") > 0, 5000, detail(1)) // below the look at the clock itself
            tryVerify(() => when(1).indexOf(", in the future") > 0, 5000, when(1))

            stage.app.clock.openDoubt()
            settle()
            verify(need("known").text.indexOf("It was behind by") === 0, need("known").text)
            tap("bannerPad", need("known"))
            tryCompare(stage.app.navigator, "page", Navigator.Today)
            tryVerify(() => detail(1).indexOf("set right") < 0)
        }
        function test_a_day_file_from_the_future_leads_to_the_clock_of_its_phone() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.phoneAheadOnStick("Phone of Kim", 5 * 24 * 60)
            show()
            tap("takeIn")
            tap("file0")
            const ahead = need("ahead")
            verify(ahead.text.indexOf("later than now") > 0, ahead.text)
            stage.app.navigator.go(Navigator.Today)
            settle()
            const doubt = need("clockDoubt")
            verify(doubt.text.startsWith("Phone of Kim has recorded at"), doubt.text)
            tap("bannerPad", doubt)
            tryCompare(stage.app.navigator, "page", Navigator.Clock)
            verify(!stage.app.clock.own)
            compare(stage.app.clock.name, "Phone of Kim")
            tap("save") // it shows what this device shows: that is before its newest record
            verify(need("error").text.indexOf("That is before its newest record") === 0, need("error").text)
            for (let i = 0; i < 5; ++i) {
                tap("more", need("day"))
            }
            tap("more", need("minute"))
            tap("save")
            tryCompare(stage.app.navigator, "page", Navigator.Today)
            tryVerify(() => shown("clockDoubt") === null)
        }
        function test_a_device_without_records_has_no_clock_to_look_at() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.addPhone("Phone of Kim")
            show()
            stage.app.openDevices()
            settle()
            const index = texts().indexOf("Phone of Kim") < texts().indexOf("This device") ? 0 : 1
            tap("act" + index)
            tryCompare(stage.app.navigator, "page", Navigator.Clock)
            need("none")
            compare(shown("save"), null)
        }
    }
}
