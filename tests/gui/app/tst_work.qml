import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// Work sheets by touch: a barrel from received to filled, gauged twice and drawn from; stopping, skipping, timers.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app
    readonly property WorkViewModel work: stage.test.app ? stage.test.app.work : null

    Finger {
        name: "Work"
        stage: stage

        // Holds a pad until it fires.
        function hold(name) {
            const item = need(name)
            tryVerify(() => item.enabled, 5000, name + " cannot be pressed: " + texts())
            bringIntoView(item)
            const touch = touchEvent(item)
            touch.press(0, item).commit()
            wait(1100)
            touch.release(0, item).commit()
            settle()
            wait(260)
        }
        function beginStep() {
            if (!stage.work.begun) {
                if (stage.work.holdToBegin) {
                    hold("holdToBegin")
                } else {
                    tap("begin")
                }
                verify(stage.work.begun, stage.work.error)
            }
        }
        // Ticks all off and fills in what is asked, with the first taps; `words` says which chip otherwise.
        function fillIn(words) {
            for (let i = 0; i < stage.work.ticks.length; ++i) {
                if (!stage.work.ticked[i]) {
                    tap("tick" + i)
                }
            }
            const asks = stage.work.asks
            for (let row = 0; row < asks.rowCount(); ++row) {
                const name = asks.data(asks.index(row, 0), AskRows.Name)
                const kind = asks.data(asks.index(row, 0), AskRows.KindRole)
                if (kind === AskRows.Number) {
                    if (asks.data(asks.index(row, 0), AskRows.Empty)) {
                        tap("more", need("number_" + name))
                    }
                } else if (words[name] === undefined && kind === AskRows.Beer) {
                    write("typed_" + name, "Night Ferry")
                } else {
                    tap("chip" + (words[name] ?? 0), need("words_" + name))
                }
            }
        }
        function doStep(words) {
            beginStep()
            fillIn(words)
            tryVerify(() => stage.work.canFinish, 5000, stage.work.stepName + ": " + stage.work.missing)
            tap("finish")
            compare(stage.work.error, "")
        }
        function workThrough(words) {
            for (let guard = 0; guard < 30 && stage.app.navigator.page === Navigator.Steps; ++guard) {
                if (stage.work.tastes) {
                    beginStep()
                    return
                }
                doStep(words)
            }
        }
        function choose(title) {
            const sheets = stage.app.sheets
            const index = sheets.titles.indexOf(title)
            verify(index >= 0, title + " is not offered: " + sheets.titles)
            tap("sheet" + index)
            compare(stage.app.navigator.page, Navigator.Steps)
            compare(stage.work.title, title)
        }
        function tasteAll() {
            tap("finish") // opens the tasting sheet
            compare(stage.app.navigator.page, Navigator.Taste)
            tap("rung5")
            while (!stage.app.tasting.last) {
                tap("next")
            }
            tap("close")
        }
        function beginWithEmptyBarrel() {
            stage.test.beginEmpty()
            stage.raise("")
            settle()
            tap("registerFirst")
            write("mark", "Rum 3")
            tap("chip2", need("spirits"))
            tap("chip4", need("sizes"))
            tap("record")
            tap("toBarrel")
            tap("work")
            compare(stage.app.navigator.page, Navigator.Sheets)
        }
        function sayWho() {
            write("newName", "Ada")
            tap("addPerson")
        }

        function test_from_received_to_drawn_from() {
            beginWithEmptyBarrel()

            // Receive it: nobody has said who they are yet.
            tap("sheet0")
            sayWho()
            tryCompare(stage.app.navigator, "page", Navigator.Steps)
            compare(stage.work.title, "Receive a barrel")
            verify(stage.work.cautions.length > 0)
            workThrough({})
            tryCompare(stage.app.navigator, "page", Navigator.Barrel)

            // Purge it: the time is this barrel's.
            tap("work")
            choose("Sanitise and purge")
            while (stage.work.stepName !== "purge") {
                doStep({})
            }
            beginStep()
            verify(stage.work.timer.running)
            verify(/^10:/.test(stage.work.timer.text), stage.work.timer.text) // 5 psi through 3 m of 6 mm
            verify(!stage.work.ripe)
            stage.test.passSeconds(660)
            tryVerify(() => stage.work.ripe, 5000)
            workThrough({})

            // Fill it, with the first readings, a tasting and a bottle.
            tap("work")
            choose("Fill")
            workThrough({})
            compare(stage.work.stepName, "tasting")
            tasteAll()
            tryCompare(stage.work, "stepName", "bottle")
            tap("back")
            tryCompare(stage.app.navigator, "page", Navigator.Steps)
            workThrough({})
            tryVerify(() => stage.app.barrel.filled, 5000)
            stage.app.navigator.go(Navigator.Due)
            settle()

            // Gauge it twice: by weight, then by the nail.
            for (const way of [0, 1]) {
                stage.test.passSeconds(86400)
                stage.app.openBarrel(stage.app.barrel.barrelId)
                settle()
                tap("work")
                choose("Gauge the level")
                workThrough({ gauge_way: way })
                tryCompare(stage.app.navigator, "page", Navigator.Barrel)
            }

            // Draw from it.
            tap("work")
            choose("Draw from the sample hole")
            workThrough({ hole: 1 })
            compare(stage.work.stepName, "taste")
            tasteAll()
            tryVerify(() => !stage.app.navigator.pages || stage.app.openWork.count === 0, 5000)

            // What the desk says of it.
            stage.app.navigator.go(Navigator.Today)
            settle()
            tap("dayFile")
            tap("write")
            tap("target0")
            stage.test.desk(["join", stage.test.stickFiles()[0]])
            const code = JSON.parse(stage.test.desk(["show", "barrels"]))[0].code
            const shown = JSON.parse(stage.test.desk(["show", "barrel", code]))
            compare(shown.fills.length, 1)
            compare(shown.fills[0].beer, "Night Ferry")
            compare(shown.gauges.length, 2)
            compare(shown.draws.length, 1)
            compare(shown.tastings.length, 2)
            compare(shown.readings.length, 1)
            compare(JSON.parse(stage.test.desk(["check"])).problems.length, 0)
        }
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
        function choose2(title) {
            const index = stage.app.sheets.titles.indexOf(title)
            tap("sheet" + index)
            sayWho()
            tryCompare(stage.app.navigator, "page", Navigator.Steps)
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
