import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A phone that has joined shows its symbol; a desk reads it with its camera and lets the phone in.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    ScanFinger {
        id: finger
        name: "Admit"
        stage: stage
        fakeCamera: Qt.resolvedUrl("FakeCamera.qml")

        function show(standIn) {
            stage.raise(standIn)
            settle()
            stage.app.navigator.go(Navigator.Today)
            settle()
        }
        function openAdmit() {
            tap("settings")
            tap("letIn")
            tryCompare(stage.app.navigator, "page", Navigator.Admit)
        }
        // The page with a camera that the test works.
        function admitWithCamera() {
            show("")
            openAdmit()
            const finder = findChild(stage, "finder")
            finder.cameraFile = fakeCamera
            tryVerify(() => finder.camera !== null && finder.camera.active)
            return finder.camera
        }
        // As two frames, since other codes than labels are believed at the second.
        function showTwice(camera, text) {
            see(camera, [text])
            see(camera, [text])
            settle()
        }
        function nameIt(name) {
            write("name", name)
            tap("admit")
        }
        function standings() {
            stage.app.openDevices()
            settle()
            return texts()
        }

        function test_a_joined_phone_shows_a_symbol_that_a_camera_reads_data() {
            return [{ tag: "light" }, { tag: "dark" }, { tag: "night" }].map((row, i) => ({ tag: row.tag, palette: i }))
        }
        function test_a_joined_phone_shows_a_symbol_that_a_camera_reads(row) {
            stage.test.beginWithBarrels(1, 0)
            stage.test.joinAsPhone()
            show("")
            stage.app.settings.palette = row.palette
            tap("settings")
            verify(shown("letIn") === null) // a phone lets nobody in
            tap("showSymbol")
            tryCompare(stage.app.navigator, "page", Navigator.Devices)
            const symbol = need("ownSymbol")
            verify(symbol.width >= 220, symbol.width + " px")
            settle()
            const code = stage.app.joining.ownCode
            compare(stage.test.symbolsOn(stage), [stage.test.symbolText(code, "TEST")])
            const codeText = need("ownCode")
            compare(codeText.value, code)
            const list = need("parts")
            verify(codeText.mapToItem(list, 0, codeText.height).y <= list.height, "it stands whole under the symbol")
            verify(shown("letIn") === null) // a phone lets nobody in
        }
        function test_a_device_that_is_let_in_shows_none() {
            stage.test.beginWithBarrels(1, 0)
            show("")
            tap("settings")
            need("ownCode")
            verify(shown("showSymbol") === null)
            tap("devices")
            need("part0")
            verify(shown("ownSymbol") === null)
        }
        function test_the_symbol_is_read_from_a_picture_and_the_phone_let_in() {
            stage.test.beginWithBarrels(1, 0)
            const code = stage.test.newPhone()
            show("file://" + stage.test.symbolPicture(stage.test.symbolText(code, "TEST")))
            openAdmit()
            tryCompare(stage.app.admitting, "state", AdmittingViewModel.Asking, 10000)
            settle()
            compare(need("device").value, code)
            tap("admit")
            compare(stage.app.admitting.error, "Type what the device shall be called.")
            nameIt("Phone of Ann")
            tryCompare(stage.app.navigator, "page", Navigator.Settings)
            compare(stage.app.notice.text, "Phone of Ann is let in. It learns it by the next day file.")
            verify(/Phone of Ann\nLet in/.test(standings()), texts())
        }
        function test_a_desk_is_let_in_as_one() {
            stage.test.beginWithBarrels(1, 0)
            const code = stage.test.newPhone()
            const camera = admitWithCamera()
            showTwice(camera, stage.test.symbolText(code, "TEST"))
            tryCompare(stage.app.admitting, "state", AdmittingViewModel.Asking)
            tap("desk")
            nameIt("Office")
            verify(/Office\nA desk: it lets others in/.test(standings()), texts())
        }
        function test_the_code_can_be_typed_and_a_slip_is_told() {
            stage.test.beginWithBarrels(1, 0)
            const code = stage.test.newPhone()
            admitWithCamera()
            const wrong = (code[0] === "7" ? "8" : "7") + code.slice(1)
            stage.app.admitting.code = wrong
            settle()
            compare(stage.app.admitting.codeError, "This code cannot be right. Compare it once more, character by character.")
            compare(stage.app.admitting.state, AdmittingViewModel.Looking)
            stage.app.admitting.code = code.toLowerCase()
            tryCompare(stage.app.admitting, "state", AdmittingViewModel.Asking)
            settle()
            nameIt("Phone of Ann")
            tryCompare(stage.app.navigator, "page", Navigator.Settings)
            // The same once more.
            tap("letIn")
            stage.app.admitting.code = code
            tryCompare(stage.app.admitting, "message", "Phone of Ann is let in already.")
            compare(stage.app.admitting.state, AdmittingViewModel.Looking)
        }
        function test_what_is_no_device_of_this_cellar_is_told_data() {
            return [{ tag: "foreign", says: "This device has joined another cellar, 7777. Let it join with a day file of this one first." },
                    { tag: "own", says: "This is the code of this device itself." },
                    { tag: "label", says: "This is a barrel's label. Point the camera at the symbol on the other device." },
                    { tag: "owner", says: "This is an owner's key. Put the sheet away: nothing here needs it." },
                    { tag: "keg 12", says: "This is not the symbol of a device. It shows it under Today, Settings, Devices." }]
        }
        function test_what_is_no_device_of_this_cellar_is_told(row) {
            stage.test.beginWithBarrels(1, 0)
            const code = stage.test.newPhone()
            const camera = admitWithCamera()
            const said = { foreign: stage.test.symbolText(code, "7777"),
                           own: stage.test.symbolText(stage.app.joining.ownCode, "TEST"),
                           label: labelOf(codeOf(0)), owner: stage.test.ownersSymbol() }
            const before = stage.test.recordCount()
            showTwice(camera, said[row.tag] ?? row.tag)
            tryCompare(stage.app.admitting, "message", row.says)
            verify(shown("finder") !== null) // it goes on looking
            verify(texts().indexOf(stage.test.ownersSymbol()) < 0)
            compare(stage.test.recordCount(), before)
        }
        function test_a_symbol_on_the_scan_page_leads_to_letting_it_in() {
            stage.test.beginWithBarrels(1, 0)
            const code = stage.test.newPhone()
            stage.raise("")
            settle()
            tap("bar1")
            const finder = findChild(stage, "finder")
            finder.cameraFile = fakeCamera
            tryVerify(() => finder.camera !== null && finder.camera.active)
            showTwice(finder.camera, stage.test.symbolText(code, "TEST"))
            tryCompare(scan, "state", ScanViewModel.AskingDevice)
            compare(need("message").text, "This device asks to be let in.")
            tap("letIn")
            tryCompare(stage.app.navigator, "page", Navigator.Admit)
            tryCompare(stage.app.admitting, "device", code)
            nameIt("Phone of Ann")
            tryCompare(stage.app.navigator, "page", Navigator.Scan)
        }
        function test_the_scan_page_says_who_can_let_it_in() {
            stage.test.beginWithBarrels(1, 0)
            const code = stage.test.newPhone()
            stage.test.joinAsPhone()
            stage.raise("")
            settle()
            scan.begin()
            for (let i = 0; i < 2; ++i) {
                scan.offer([stage.test.symbolText(code, "TEST")], ["qr"])
            }
            tryCompare(scan, "state", ScanViewModel.NotALabel)
            verify(/^This device may not let others in. Show the code to: .+\.$/.test(scan.message), scan.message)
            stage.app.openAdmit()
            settle()
            compare(need("missing").text, scan.message)
            verify(shown("finder") === null)
            verify(shown("code") === null)
        }
        function test_the_owners_key_is_never_shown_on_the_scan_page() {
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
            scan.begin()
            for (let i = 0; i < 2; ++i) {
                scan.offer([stage.test.ownersSymbol()], ["qr"])
            }
            tryCompare(scan, "message", "This is an owner's key. Put the sheet away: nothing here needs it.")
        }
    }
}
