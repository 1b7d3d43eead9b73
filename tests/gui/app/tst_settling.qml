import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// What devices leave for a person to decide: each kind of it is told, settled and gone.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    Finger {
        name: "Settling"
        stage: stage

        function begin(whats) {
            stage.test.beginWithBarrels(2, 0)
            for (const what of whats) {
                stage.test.leaveToSettle(what)
            }
            show()
        }
        function show() {
            stage.raise("")
            settle()
            stage.app.navigator.go(Navigator.Today)
            settle()
        }
        function openList() {
            tap("toSettle")
            tryCompare(stage.app.navigator, "page", Navigator.ToSettle)
        }
        function openFirst() {
            openList()
            tap("row0")
            tryCompare(stage.app.navigator, "page", Navigator.Settle)
            tryVerify(() => stage.app.settle.loaded)
        }
        // The one thing there was is settled: told, back at a list with nothing in it, and no pad on Today.
        function expectNothingLeft(said) {
            tryCompare(stage.app.navigator, "page", Navigator.ToSettle)
            compare(stage.app.notice.text, said)
            tryCompare(stage.app.toSettle, "count", 0)
            verify(shown("empty") !== null)
            stage.app.navigator.go(Navigator.Today)
            settle()
            verify(shown("toSettle") === null)
        }

        function test_nothing_to_settle_has_no_pad() {
            begin([])
            verify(stage.app.toSettle.loaded)
            verify(shown("toSettle") === null)
            stage.app.openToSettle()
            settle()
            compare(need("empty").text, "Nothing to settle.")
        }
        function test_all_kinds_are_told() {
            begin([1, 2, 3, 4, 8, 9, 10, 11])
            compare(stage.app.toSettle.count, 9) // of two barrels with one code, each
            compare(need("toSettle").text, "To settle: 9")
            openList()
            const rows = stage.app.toSettle.rows
            const all = []
            for (let i = 0; i < rows.rowCount(); ++i) {
                const role = which => rows.data(rows.index(i, 0), which)
                all.push(role(ToSettleRows.About) + " | " + role(ToSettleRows.What) + " | " + role(ToSettleRows.Who))
            }
            for (const said of ["Rum 1 | Drawn: corrected on two devices, and they differ. | Recorded by Phone, ",
                                "Rum 1 | Drawn: taken back on one device, corrected on another. | Recorded by Phone, ",
                                "Port 1 | Another barrel has the same code. | ",
                                "Port 2 | Another barrel has the same code. | ",
                                "Gin 1 | It was filled twice and not emptied between. | ",
                                "Phone of Lee | This device was copied or set back. | ",
                                "Phone of Max | 3 record(s) of this device are set aside. | ",
                                "A device without a name | 1 record(s) wait until this device is let in. | The code that it shows: ",
                                "Update Spile | 1 record(s) need a newer version. | "]) {
                verify(all.some(line => line.indexOf(said) >= 0), said + " in " + all.join("; "))
            }
        }
        function test_a_value_is_chosen() {
            begin([1])
            openFirst()
            const said = [need("choice0").text, need("choice1").text].sort()
            compare(said, ["The volume: 70 mL", "The volume: 90 mL"])
            verify(/^Phone.*, .*:/.test(need("choice0").hint), need("choice0").hint)
            const ninety = need("choice0").text === "The volume: 90 mL" ? "choice0" : "choice1"
            tap(ninety)
            expectNothingLeft("Settled: the value you chose counts.")
            stage.app.openBarrel(stage.test.idOf("Rum 1"))
            settle()
            verify(texts().indexOf("90 mL") >= 0, texts())
            verify(texts().indexOf("70 mL") < 0)
        }
        function test_a_record_comes_back() {
            begin([2])
            openFirst()
            compare(need("choice0").text, "It stays taken back")
            tap("choice1")
            expectNothingLeft("Settled: it counts.")
            stage.app.openBarrel(stage.test.idOf("Rum 1"))
            settle()
            verify(texts().indexOf("90 mL") >= 0, texts())
        }
        function test_a_barrel_gets_a_new_code() {
            begin([3])
            compare(stage.app.toSettle.count, 2)
            openFirst()
            const barrel = stage.app.settle.about
            compare(need("choice0").text, "Give " + barrel + " a new code")
            tap("choice0")
            expectNothingLeft(barrel + " has a new code. Print a label for its head.")
        }
        function test_a_fill_is_taken_back() {
            begin([4])
            openFirst()
            const said = [need("choice0").text, need("choice1").text].sort()
            compare(said, ["Take this fill back: 181 L", "Take this fill back: 182 L"])
            tap("choice0")
            expectNothingLeft("Settled: it is taken back.")
        }
        function test_one_of_two_gauges_is_taken_back() {
            begin([5])
            openFirst()
            compare(need("choice0").text, "Take it back: gauged 50.0 L")
            compare(need("choice2").text, "Both are right")
            tap("choice0")
            expectNothingLeft("Settled: it is taken back.")
        }
        function test_both_gauges_are_right() {
            begin([5])
            openFirst()
            tap("choice2")
            expectNothingLeft("Settled: both stay.")
        }
        function test_what_cannot_be_in_a_barrel_is_taken_back_data() {
            return [{ tag: "too much", what: 6, said: "Take it back: gauged 900 L" },
                    { tag: "too little", what: 7, said: "Take it back: drawn 2.0 L" }]
        }
        function test_what_cannot_be_in_a_barrel_is_taken_back(row) {
            begin([row.what])
            openFirst()
            compare(need("choice0").text, row.said)
            tap("choice0")
            expectNothingLeft("Settled: it is taken back.")
        }
        function test_a_copied_devices_old_key_is_cut_off() {
            begin([8])
            openFirst()
            verify(texts().indexOf("The records of both are kept.") >= 0)
            tap("choice0")
            expectNothingLeft("Settled: the old key is cut off.")
        }
        function test_what_is_set_aside_counts_one_or_all() {
            begin([9])
            openFirst()
            verify(need("choice2").text.startsWith("Let it count: Rum 1, drawn"), need("choice2").text)
            tap("choice0")
            tryCompare(stage.app.navigator, "page", Navigator.ToSettle)
            compare(stage.app.notice.text, "1 record(s) count now.")
            compare(stage.app.toSettle.count, 1)
            tap("row0")
            compare(need("all").text, "Let all 2 record(s) count")
            tap("all")
            expectNothingLeft("2 record(s) count now.")
        }
        function test_a_waiting_device_is_named_and_let_in() {
            begin([10])
            openFirst()
            tap("choice0")
            compare(need("error").text, "Type what the device shall be called.")
            write("deviceName", "Kim")
            tap("choice0")
            expectNothingLeft("Kim is let in.")
            stage.app.openDevices()
            settle()
            verify(texts().indexOf("Kim\n") >= 0, texts())
        }
        function test_what_needs_a_newer_version_has_no_choice() {
            begin([11])
            openFirst()
            verify(texts().indexOf("Update Spile: 1 record(s) need a newer version.") >= 0, texts())
            verify(shown("choice0") === null)
        }
        function test_only_a_desk_lets_in() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.joinAsPhone()
            stage.test.leaveToSettle(10)
            show()
            openFirst()
            compare(need("missing").text, "Only a desk can do this.")
            verify(!need("choice0").enabled)
            verify(shown("deviceName") === null)
            stage.app.openDevices()
            settle()
            verify(shown("deskOnly") !== null)
            verify(shown("other0") === null)
        }
    }
}
