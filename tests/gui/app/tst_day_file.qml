import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The day file: no state is skipped or claimed before it is proven; corrections after it was written.
AppStage {
    id: stage

    readonly property DayFileViewModel dayFile: stage.test.app ? stage.test.app.dayFile : null

    Finger {
        name: "DayFile"
        stage: stage

        function begin() {
            stage.test.beginWithBarrels(1, 1)
            stage.raise("")
            settle()
            stage.test.app.people.choose(0)
        }
        function draw() {
            stage.test.app.navigator.go(Navigator.Due)
            settle()
            tap("row0")
            tap("draw")
            tap("record")
            stage.test.app.goBack()
            settle()
        }
        function test_states_follow_one_another() {
            begin()
            tap("bar2")
            tap("dayFile")
            compare(stage.dayFile.fileName, "")
            compare(stage.dayFile.handedText, "")
            verify(!shown("handed"))
            verify(!shown("target0"), "nothing to hand over yet")
            tap("write")
            verify(stage.dayFile.fileName.endsWith(".spile"))
            verify(!shown("handed"), "it is not handed over by being written")
            compare(stage.test.stickFiles().length, 0)
            tap("target0")
            verify(shown("handed"))
            compare(stage.test.stickFiles().length, 1)
            for (const word of ["synced", "Synced", "synchron"]) {
                verify(!texts().includes(word))
            }
            // Nothing says that the desk has it: there is no receipt.
            compare(stage.dayFile.receipts.length, 0)
        }
        function test_leaves_out_what_is_damaged_here_and_says_so() {
            begin()
            draw()
            tap("back")
            stage.test.spoilNewestDraw()
            tap("bar2")
            tap("dayFile")
            tap("write")
            verify(stage.dayFile.fileName.endsWith(".spile"), stage.dayFile.error)
            verify(need("leftOut").visible)
            verify(stage.dayFile.leftOutText.startsWith("1 record(s)"), stage.dayFile.leftOutText)
        }
        function test_counts_what_is_new() {
            begin()
            tap("bar2")
            tap("dayFile")
            tap("write")
            compare(stage.test.app.dayFile.shortText, "Nothing new")
            draw()
            tap("back")
            tap("bar2")
            verify(stage.test.app.dayFile.shortText.startsWith("1 "), stage.test.app.dayFile.shortText)
        }
        function test_taking_back_after_the_file_makes_a_correction() {
            begin()
            draw()
            tap("back")
            tap("bar2")
            tap("dayFile")
            tap("write")
            tap("back")
            const before = stage.test.app.today.journal.rowCount()
            tap("takeBack0")
            tryVerify(() => texts().includes("Taken back"), 5000)
            verify(stage.test.app.dayFile.shortText.startsWith("1 "), "the correction is new: " + stage.test.app.dayFile.shortText)
            compare(stage.test.app.today.journal.rowCount(), before)
            tap("takeBack0")
            tryVerify(() => !texts().includes("Taken back:") && !stage.test.app.today.journal.data(stage.test.app.today.journal.index(0, 0), Qt.UserRole + 4), 5000)
        }
        function test_says_that_a_sheet_is_open() {
            begin()
            tap("row0")
            stage.test.app.taste()
            settle()
            stage.test.app.openDayFile()
            settle()
            compare(stage.dayFile.openSheets, 1)
            verify(texts().includes("still open"), texts())
        }
        function test_full_storage_is_said_and_nothing_lost() {
            begin()
            draw()
            stage.test.fillDisk()
            stage.test.app.openDayFile()
            settle()
            tap("write")
            verify(texts().includes("storage is full"), texts())
            verify(texts().includes("is safe"), texts())
            compare(stage.dayFile.fileName, "")
        }
        function writeSealed() {
            begin()
            tap("bar2")
            tap("dayFile")
            verify(!shown("passphrase"))
            tap("chip1", need("sealed"))
            tap("write")
            const passphrase = need("passphrase").text
            verify(/^([0-9A-Z]{4}-){4}[0-9A-Z]{4}$/.test(passphrase), passphrase)
            tap("target0")
            compare(stage.test.stickFiles().length, 1)
            return passphrase
        }
        function takeInFromPath(file) {
            stage.test.app.takeIn.path = file
            tap("takePath")
            verify(need("passphrase"))
            compare(stage.test.app.takeIn.error, "") // it is asked for, nothing went wrong
            verify(!need("unseal").enabled)
        }
        function test_a_sealed_file_is_taken_in_with_its_passphrase_alone() {
            const passphrase = writeSealed()
            tap("back")
            tap("takeIn")
            takeInFromPath(stage.test.stickFiles()[0])
            write("passphrase", "0000-0000-0000-0000-0000")
            tap("unseal")
            compare(stage.test.app.takeIn.error, "That is not the passphrase of this file. Nothing was changed.")
            stage.test.app.takeIn.passphrase = passphrase.toLowerCase()
            tap("unseal")
            compare(stage.test.app.takeIn.error, "")
            compare(need("result").text, "Nothing new: all of it was here already.")
            verify(!shown("unseal"))
        }
        function test_a_passphrase_is_forgotten_with_the_page() {
            writeSealed()
            tap("back")
            tap("dayFile")
            verify(!shown("passphrase"))
            compare(stage.dayFile.passphrase, "")
            verify(!stage.dayFile.sealed)
        }
        function test_a_device_joins_by_a_sealed_file() {
            const passphrase = writeSealed()
            const file = stage.test.carried(stage.test.stickFiles()[0])
            stage.lower()
            stage.test.beginEmpty()
            stage.raise("")
            settle()
            tap("takeInFirst")
            takeInFromPath(file)
            compare(stage.test.app.problem, "")
            stage.test.app.takeIn.passphrase = passphrase
            tap("unseal")
            tryCompare(stage.test.app, "stage", AppViewModel.Ready)
            compare(stage.test.app.navigator.page, Navigator.Devices)
        }
        function takeInAfterSettingBack() {
            stage.test.setBackWithFileOnStick()
            stage.raise("")
            settle()
            stage.test.app.openTakeIn()
            settle()
            tap("file0")
        }
        function test_a_phone_that_was_set_back_is_told_and_shows_its_new_code() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.joinAsPhone()
            stage.raise("")
            settle()
            stage.test.app.navigator.open(Navigator.Settings)
            settle()
            const before = need("ownCode").value
            stage.lower()
            takeInAfterSettingBack()
            compare(need("renewed").text, "This device was copied or set back to an earlier state. It goes on under a new key: let it in at the desk again.")
            tap("bannerPad", need("renewed"))
            tryCompare(stage.test.app.navigator, "page", Navigator.Settings)
            verify(need("ownCode").value !== before)
        }
        function test_a_desk_that_was_set_back_lets_itself_in() {
            stage.test.beginWithBarrels(1, 0)
            takeInAfterSettingBack()
            compare(need("renewed").text, "This device was copied or set back to an earlier state. It goes on under a new key.")
            verify(!shown("bannerPad", need("renewed")))
        }
    }
}
