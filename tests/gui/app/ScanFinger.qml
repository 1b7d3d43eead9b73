import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A finger that works the scan page, and a camera that sees what it is told to.
Finger {
    id: scanner

    readonly property ScanViewModel scan: scanner.stage.test.app?.scan ?? null
    property url fakeCamera
    readonly property string freeCode: "22222A" // valid in the cellar TEST, given to no barrel

    function begin() {
        scanner.stage.test.beginWithBarrels(3, 0)
        scanner.stage.raise("")
        settle()
    }
    // Opens the page with a camera that the test works.
    function withFakeCamera() {
        begin()
        tap("bar1")
        const finder = findChild(scanner.stage, "finder")
        finder.cameraFile = scanner.fakeCamera
        tryVerify(() => finder.camera !== null && finder.camera.active)
        settle() // the pads move
        return finder.camera
    }
    function labelOf(code) {
        return "S1TEST" + code.replace("-", "")
    }
    // The camera sees labels, that nearest the middle first.
    function see(camera, texts) {
        camera.texts = texts
        camera.formats = texts.map(() => "qr")
        camera.codesRead()
    }
    // The barrels are "Rum 1" and so on.
    function codeOf(index) {
        return scanner.stage.test.codeOf("Rum " + (index + 1))
    }
    function idOf(index) {
        return scanner.stage.test.idOf("Rum " + (index + 1))
    }
    // As by a label that the camera has read.
    function scanned(index) {
        scanner.stage.test.app.navigator.go(Navigator.Scan)
        settle()
        scan.offer([labelOf(codeOf(index))], ["qr"])
        tryVerify(() => scanner.stage.test.app.navigator.page !== Navigator.Scan, 5000)
        settle()
    }
    // A frame without a code gives that advice, and these words follow.
    function said(camera, advice, words) {
        camera.nothingRead(advice)
        tryVerify(() => shown("hints") !== null && shown("hints").text === words, 5000, words)
    }
}
