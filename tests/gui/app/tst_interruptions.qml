import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A sheet and what comes between: calls, locks, a clock that is set.
AppStage {
    id: stage

    readonly property TastingViewModel tasting: stage.test.app ? stage.test.app.tasting : null

    Finger {
        name: "Interruptions"
        stage: stage

        function openSheet() {
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
            stage.test.app.people.choose(0)
            tap("row0")
            stage.test.app.taste()
            settle()
            compare(stage.test.app.navigator.page, Navigator.Taste)
        }
        function test_interrupted_at_every_step() {
            openSheet()
            while (!stage.tasting.last) {
                const title = stage.tasting.title
                if (stage.tasting.step === TastingViewModel.Attribute) {
                    tap("rung5")
                }
                stage.test.setApplicationState(Qt.ApplicationInactive)
                stage.test.setApplicationState(Qt.ApplicationSuspended)
                stage.test.passSeconds(600)
                stage.test.setApplicationState(Qt.ApplicationActive)
                settle()
                compare(stage.test.app.navigator.page, Navigator.WasHere, title)
                tap("goOn0")
                compare(stage.tasting.title, title)
                if (stage.tasting.step === TastingViewModel.Attribute) {
                    compare(stage.tasting.value, 5, title)
                }
                stage.tasting.next()
                settle()
            }
        }
        function test_clock_jumps_are_said_data() {
            return [{ tag: "an hour on", minutes: 60 }, { tag: "an hour back", minutes: -60 }]
        }
        function test_clock_jumps_are_said(data) {
            openSheet()
            tap("rung3")
            stage.test.setApplicationState(Qt.ApplicationSuspended)
            stage.test.passSeconds(30)
            stage.test.jumpClock(data.minutes)
            stage.test.setApplicationState(Qt.ApplicationActive)
            settle()
            verify(texts().includes("60"), texts())
            tap("goOn0")
            compare(stage.tasting.value, 3)
            tap("rung5")
            compare(stage.tasting.value, 5)
        }
        function test_a_short_glance_away_changes_nothing() {
            openSheet()
            stage.test.setApplicationState(Qt.ApplicationInactive)
            stage.test.passSeconds(1)
            stage.test.setApplicationState(Qt.ApplicationActive)
            settle()
            compare(stage.test.app.navigator.page, Navigator.Taste)
        }
    }
}
