import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A lot: begun, held, let go, packages released and never more than there are, what it cost.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    Finger {
        name: "Lots"
        stage: stage

        function lot() { return stage.app.lot }
        function form() { return stage.app.lotRecord }
        function begin() {
            stage.test.beginWithBarrels(2, 0)
            stage.test.addLot("Tank 2", "Rum 1", "L-1")
            stage.raise("")
            settle()
            stage.app.people.choose(0)
        }
        function openLots() {
            stage.app.navigator.go(Navigator.Today)
            settle()
            tap("lots")
            tryCompare(stage.app.navigator, "page", Navigator.Lots)
        }
        function openLot() {
            openLots()
            tap("row0")
            tryCompare(stage.app.navigator, "page", Navigator.Lot)
            tryVerify(() => lot().loaded)
        }
        function beginAtLot() {
            begin()
            openLot()
        }
        // The first pad below a part that says this.
        function tapPad(words) {
            const pads = []
            collect(need("parts"), pads)
            const pad = pads.find(one => one.text === words)
            verify(pad, words + " has no pad")
            tap(pad.objectName, need("parts"))
        }
        function collect(item, pads) {
            if (item.visible && /^(act|other)\d+$/.test(item.objectName)) {
                pads.push(item)
            }
            for (let i = 0; i < item.children.length; ++i) {
                collect(item.children[i], pads)
            }
        }
        function record() { tap("record"); settle() }
        function hold() {
            tap("hold")
            tap("chip0", need("choices"))
            record()
            tryVerify(() => lot().heldText.length > 0)
        }

        function test_a_lot_is_made_and_waits_for_a_barrel() {
            begin()
            openLots()
            tap("newLot")
            verify(!need("record").enabled)
            write("own", "Tank 7")
            record()
            tryCompare(stage.app.navigator, "page", Navigator.Lot)
            tryCompare(lot(), "name", "Tank 7")
            verify(!need("package").enabled)
            verify(!need("trace").enabled)
            tap("takeInBarrel")
            tryCompare(stage.app.navigator, "page", Navigator.LotBarrels)
            tap("row1")
            tryCompare(stage.app.navigator, "page", Navigator.Steps)
            compare(stage.app.work.barrelName, "Rum 2")
            // The lot that it was taken in for is filled in.
            for (let step = 0; stage.app.work.stepName !== "where_to" && step < 5; ++step) {
                const before = stage.app.work.stepName
                stage.app.work.skip(0)
                tryVerify(() => stage.app.work.stepName !== before)
            }
            compare(stage.app.work.stepName, "where_to")
            verify(stage.app.work.missing.indexOf("lot") < 0, stage.app.work.missing)
            stage.app.goBack()
            tryCompare(stage.app.navigator, "page", Navigator.Lot)
            stage.app.goBack()
        }
        function test_a_lots_page_tells_what_there_is() {
            beginAtLot()
            compare(lot().volumeIn, "100.0 L")
            compare(lot().volumeOut, "60.0 L")
            compare(lot().volumeLeft, "40.0 L")
            compare(lot().strength, "11.0 % vol")
            compare(lot().allergens, "coconut")
            const all = texts()
            for (const said of ["100.0 L from Rum 1", "Coconut, 1.50 kg", "Allergen: coconut", "L-1", "120 × bottle 500 mL"]) {
                verify(all.indexOf(said) >= 0, said)
            }
        }
        function test_what_is_taken_out_is_out_and_can_be_taken_back() {
            beginAtLot()
            tapPad("Taken out")
            tryVerify(() => texts().indexOf("To be taken out by") < 0)
            verify(texts().indexOf("Taken out") >= 0)
            stage.app.notice.undo()
            tryVerify(() => texts().indexOf("To be taken out by") >= 0)
        }
        function test_a_held_lot_is_neither_packaged_nor_released() {
            beginAtLot()
            hold()
            compare(need("held").text, "Held: laboratory result. Until its result is in, nothing is packaged or released.")
            verify(!need("package").enabled)
            tapPad("Release")
            write("own", "The Lock")
            tap("more", need("count0"))
            record()
            compare(form().error, "The lot is held: laboratory result. Its result comes first.")
            stage.app.goBack()
            settle()
            tapPad("Result is in")
            tap("chip0", need("choices"))
            record()
            tryVerify(() => lot().heldText.length === 0)
            verify(need("package").enabled)
        }
        function test_no_more_is_released_than_is_left() {
            beginAtLot()
            tapPad("Release")
            verify(!need("record").enabled)
            write("own", "The Lock")
            verify(!need("record").enabled)
            form().stepCount(0, 500)
            compare(need("count0").readout, "120")
            verify(!need("count0").canMore)
            form().stepCount(0, -20)
            record()
            tryCompare(stage.app.navigator, "page", Navigator.Lot)
            tryVerify(() => texts().indexOf("To The Lock: 100 × bottle 500 mL") >= 0)
            verify(texts().indexOf("Left in the house: 20 × bottle 500 mL") >= 0)
            tapPad("Release")
            write("own", "Corner Shop")
            form().stepCount(0, 500)
            compare(need("count0").readout, "20")
            record()
            tryVerify(() => texts().indexOf("Left in the house: none") >= 0)
        }
        function test_beer_is_poured_away_and_no_more_than_there_is() {
            beginAtLot()
            tap("pourAway")
            verify(shown("caution") !== null)
            verify(!need("record").enabled)
            form().stepVolume(5)
            verify(!need("record").enabled)
            tap("chip0", need("choices"))
            form().stepVolume(100)
            compare(form().volume, "40.0 L")
            form().stepVolume(-10)
            record()
            tryCompare(lot(), "volumeLeft", "10.0 L")
            verify(texts().indexOf("30.0 L poured away: not sound") >= 0)
        }
        function test_costs_of_lot_barrel_and_beer_make_a_price() {
            beginAtLot()
            tap("cost")
            write("own", "bottles")
            write("costTyped", "much")
            verify(!need("record").enabled)
            form().cost = "60"
            record()
            stage.app.openBarrel(stage.test.idOf("Rum 1"))
            settle()
            tap("cost")
            form().own = "barrel"
            form().cost = "100"
            form().stepFills(0)
            form().stepFills(1)
            compare(form().fills, "2")
            record()
            tap("cost")
            tap("chip1", need("choices"))
            compare(form().asksFills, false)
            form().own = "malt"
            form().cost = "380"
            record()
            stage.app.openReports()
            stage.app.reports.chooseReport(ReportsViewModel.Costs)
            tryVerify(() => stage.app.reports.loaded && texts().indexOf("Rum 1: ") >= 0)
            // All of the barrel's 50 and the half of 380 that lay in it, on 100 L; and 60 on top, on 60 L of bottles.
            verify(texts().indexOf("Rum 1: 2.40 a litre") >= 0, texts())
            verify(texts().indexOf("5.00 a litre, 300.00 in all") >= 0, texts())
            verify(texts().indexOf("Not every barrel") < 0)
        }
    }
}
