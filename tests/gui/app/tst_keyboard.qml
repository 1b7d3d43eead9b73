import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A whole tasting at the desk, by the keyboard alone.
AppStage {
    id: stage

    width: 1280
    height: 800

    Finger {
        name: "Keyboard"
        stage: stage

        // Goes on with Tab until the pad of that name has the focus, then presses it.
        function press(name) {
            for (let tabs = 0; tabs < 200; ++tabs) {
                const item = Window.window.activeFocusItem
                if (item && item.objectName === name && item.visible) {
                    keyClick(Qt.Key_Space)
                    settle()
                    wait(260)
                    return
                }
                keyClick(Qt.Key_Tab)
            }
            fail(name + " is not reached by Tab")
        }
        function test_a_tasting() {
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
            stage.test.app.people.choose(0)
            press("row0")
            press("taste")
            const tasting = stage.test.app.tasting
            while (tasting.step === TastingViewModel.Attribute) {
                press("rung5")
                compare(tasting.value, 5)
                press("next")
            }
            while (!tasting.last) {
                press("next")
            }
            press("close")
            compare(stage.test.app.navigator.page, Navigator.Compare)
        }
    }
}
