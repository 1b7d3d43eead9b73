import QtQuick
import QtTest
import Spile.Components
import Spile.TestApp
import Spile.ViewModels

// The scan page without a camera that reads: the code is typed.
AppStage {
    id: stage

    ScanFinger {
        id: finger
        name: "ScanTyped"
        stage: stage
        fakeCamera: Qt.resolvedUrl("FakeCamera.qml")

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
        function test_what_is_typed_so_far_suggests_barrels() {
            withFakeCamera()
            const code = codeOf(1).replace("-", "")
            tap("type")
            tap("key" + code[0])
            compare(shown("suggestion0"), null)
            const key = need("key" + code[1])
            bringIntoView(key)
            const y = key.mapToItem(stage, 0, 0).y
            tap("key" + code[1])
            need("suggestion0")
            compare(key.mapToItem(stage, 0, 0).y, y) // nothing moves under the finger
            for (let i = 0; shown("suggestion" + i) !== null; ++i) {
                compare(shown("suggestion" + i).hint.slice(0, 2), code.slice(0, 2))
            }
            tap("key" + code[2])
            tap("suggestion0")
            tryCompare(stage.test.app.barrel, "name", "Rum 2", 5000)
            compare(stage.test.app.navigator.page, Navigator.Barrel)
        }
    }
}
