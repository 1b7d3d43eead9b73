import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// From the barrel to the bottle by touch: a full barrel pushed out into a lot, which is packaged once no hold is in the way.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app
    readonly property WorkViewModel work: stage.test.app ? stage.test.app.work : null

    WorkFinger {
        name: "Emptying"
        stage: stage

        function doUntil(step, words) {
            for (let guard = 0; guard < 20 && stage.work.stepName !== step; ++guard) {
                doStep(words)
            }
            compare(stage.work.stepName, step)
        }
        function fillTheBarrel() {
            beginWithEmptyBarrel()
            choose2("Fill")
            doUntil("tasting", {})
            stage.work.skip(0)
            tryCompare(stage.work, "stepName", "bottle")
            workThrough({})
            tryVerify(() => stage.app.barrel.filled, 5000)
        }
        function test_from_the_barrel_to_the_bottle() {
            fillTheBarrel()
            tap("work")
            choose("Empty")
            verify(stage.work.cautions.indexOf("Ease every bung") === 0, stage.work.cautions)
            doUntil("pressure", { way_out: 2 })

            // What is too much is refused, at this step and where the gas is opened.
            beginStep()
            fillIn({})
            verify(stage.work.canFinish)
            stage.work.stepAsk("push_pa", 10) // half a bar more
            tryVerify(() => !stage.work.canFinish, 5000)
            verify(stage.work.missing.indexOf("Not like this. Force on each head") === 0, stage.work.missing)
            stage.work.skip(0)
            tryCompare(stage.work, "stepName", "line")
            doUntil("push", {})
            verify(stage.work.beginMissing.length > 0)
            verify(!need("holdToBegin").enabled)
            stage.work.stepAsk("push_pa", -10)
            tryCompare(stage.work, "beginMissing", "")
            verify(stage.work.cautions.indexOf("on each head") > 0, stage.work.cautions)
            workThrough({ out_way: 0 })
            tryVerify(() => !stage.app.barrel.filled, 5000)

            // The lot is there. While it is held its sheet does not go on.
            stage.app.openLots()
            settle()
            tap("row0")
            compare(stage.app.lot.name, "Harbour Light")

            // What is put in is due to be taken out when its time is over.
            stage.app.beginLotSheet("finish", stage.app.lot.lotId)
            settle()
            workThrough({})
            tryCompare(stage.app.navigator, "page", Navigator.Lot)
            compare(stage.app.due.takeOuts.length, 0)
            stage.test.passSeconds(8 * 86400)
            stage.app.navigator.go(Navigator.Due)
            tryVerify(() => stage.app.due.takeOuts.length === 1, 5000)
            compare(stage.app.due.takeOuts[0], "Take vanilla out of Harbour Light")
            tap("takeOut0")
            tryCompare(stage.app.navigator, "page", Navigator.Lot)

            stage.app.beginLotSheet("package", stage.app.lot.lotId)
            settle()
            compare(stage.app.navigator.page, Navigator.Steps)
            compare(stage.work.barrelName, "Harbour Light")
            compare(stage.work.barrelId, "")
            stage.test.holdLot(stage.app.lot.lotId, "waits for the laboratory")
            tryVerify(() => !stage.work.canFinish, 5000)
            verify(stage.work.missing.indexOf("waits for the laboratory") > 0, stage.work.missing)
            stage.test.clearHolds(stage.app.lot.lotId)
            tryVerify(() => stage.work.canFinish, 5000)
            workThrough({})
            tryCompare(stage.app.navigator, "page", Navigator.Lot)
            compare(stage.app.openWork.count, 0)
        }
    }
}
