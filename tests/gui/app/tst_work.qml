import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The work sheets by touch: a barrel from received to filled, gauged twice and drawn from.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app
    readonly property WorkViewModel work: stage.test.app ? stage.test.app.work : null

    WorkFinger {
        name: "Work"
        stage: stage

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
    }
}
