import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// Work sheets and what comes between: timers, stops, restarts, a clock that is set; skipping and top-ups.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app
    readonly property WorkViewModel work: stage.test.app ? stage.test.app.work : null

    WorkFinger {
        name: "WorkTimers"
        stage: stage

        function test_a_timer_calls_from_any_page() {
            beginWithEmptyBarrel()
            choose2("Swell and re-wet the wood")
            doStep({})
            beginStep()
            tap("back")
            stage.app.navigator.go(Navigator.Due)
            settle()
            compare(stage.app.openWork.call, "")
            stage.test.passSeconds(1801)
            tryVerify(() => stage.app.openWork.call.length > 0, 5000)
            tap("answerCall")
            tryCompare(stage.app.navigator, "page", Navigator.Steps)
            compare(stage.work.stepName, "upper_head")
            verify(stage.work.ripe)
            compare(stage.app.openWork.call, "")
        }
        function test_stopped_and_gone_on_with_after_a_restart() {
            beginWithEmptyBarrel()
            choose2("Sanitise and purge")
            while (stage.work.stepName !== "purge") {
                doStep({})
            }
            beginStep()
            stage.test.passSeconds(60)
            tap("stop")
            verify(texts().includes("Close the gas at the cylinder"), texts())
            const left = stage.work.timerCaption
            stage.test.passSeconds(3600)
            stage.lower()
            stage.test.restart()
            stage.raise("")
            settle()
            tryCompare(stage.app.navigator, "page", Navigator.WasHere)
            verify(texts().includes("Rum 3"), texts())
            tap("goOnWork0")
            compare(stage.work.stepName, "purge")
            verify(!stage.work.stopped)
            verify(stage.work.timer.running && !stage.work.timer.over, left)
        }
        function test_a_step_is_skipped_with_a_reason() {
            beginWithEmptyBarrel()
            choose2("Receive a barrel")
            tap("skip")
            tap("chip1", need("skipReasons"))
            compare(stage.work.stepName, "smell")
            tap("back")
            verify(texts().includes("done before"), texts())
        }
        function test_the_clock_is_set_while_a_timer_runs() {
            beginWithEmptyBarrel()
            choose2("Swell and re-wet the wood")
            doStep({})
            beginStep()
            stage.test.setApplicationState(Qt.ApplicationSuspended)
            stage.test.passSeconds(600)
            stage.test.jumpClock(180)
            stage.test.setApplicationState(Qt.ApplicationActive)
            settle()
            compare(stage.app.navigator.page, Navigator.WasHere)
            tap("goOnWork0")
            tryVerify(() => /^(20:00|19:5\d)$/.test(stage.work.timer.text), 5000, stage.work.timer.text)
        }
        function test_a_sheet_is_not_begun_by_who_is_chosen_later() {
            beginWithEmptyBarrel()
            tap("sheet0")
            compare(stage.app.navigator.page, Navigator.People)
            tap("back")
            stage.app.navigator.open(Navigator.People)
            settle()
            sayWho()
            tryCompare(stage.app.navigator, "page", Navigator.Sheets)
            compare(stage.app.openWork.count, 0)
        }
        function test_top_ups_are_offered_only_where_the_owner_wants_them() {
            stage.test.beginWithBarrels(1, 0)
            stage.raise("")
            settle()
            stage.app.people.choose(0)
            tap("row0")
            tap("work")
            verify(!stage.app.sheets.titles.includes("Top up"))
            stage.app.settings.topUps = true
            verify(stage.app.sheets.titles.includes("Top up"))
        }
    }
}
