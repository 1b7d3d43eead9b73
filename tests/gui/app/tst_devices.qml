import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The devices of a cellar: one is cut off; one that was cut off, or is too old for its cellar, is told so.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    Finger {
        name: "Devices"
        stage: stage

        function show() {
            stage.raise("")
            settle()
            stage.app.navigator.go(Navigator.Today)
            settle()
        }
        function test_a_lost_phone_is_cut_off() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.addPhone("Phone of Kim")
            show()
            tap("settings")
            tap("devices")
            tryCompare(stage.app.navigator, "page", Navigator.Devices)
            const pads = [0, 1].filter(i => shown("other" + i) !== null)
            compare(pads.length, 1) // this device itself has none
            tap("other" + pads[0])
            tryCompare(stage.app.navigator, "page", Navigator.CutOff)
            compare(stage.app.devices.name, "Phone of Kim")
            tap("chip1", need("reasons"))
            compare(stage.app.devices.reason, 1)
            write("own", "in the canal")
            compare(stage.app.devices.reason, -1)
            tap("cut")
            tryCompare(stage.app.navigator, "page", Navigator.Devices)
            verify(stage.app.notice.text.startsWith("Phone of Kim is cut off."), stage.app.notice.text)
            tryVerify(() => shown("other" + pads[0]) === null)
            verify(texts().indexOf("Cut off") >= 0)
        }
        function test_a_device_that_was_cut_off_is_told() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.cutOffByOther()
            show()
            compare(need("cutOff").text, "This device was cut off. What it records is set aside.")
        }
        function test_a_cellar_of_a_newer_version_is_for_reading() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.becomeNewer()
            show()
            compare(need("readsOnly").text, "A newer Spile wrote this cellar. Update; until then it is for reading.")
            verify(stage.app.due.barrels.rowCount() > 0)
        }
        function test_the_day_file_of_a_phone_that_was_cut_off_counts_nowhere_and_that_is_said() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.cutOffPhoneOnStick("Phone of Max")
            stage.raise("")
            settle()
            stage.app.openTakeIn()
            settle()
            tap("file0")
            compare(need("result").text, "1 record(s) added. The device that made the file is cut off "
                    + "or not let in: 1 record(s) of it count nowhere. They stand on Today, under To settle.")
        }
    }
}
