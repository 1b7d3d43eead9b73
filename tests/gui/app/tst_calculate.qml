import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The calculators by touch: this barrel's purge, in both systems of units, with its sources.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app
    readonly property CalculatingViewModel calculating: stage.test.app ? stage.test.app.calculating : null

    Finger {
        name: "Calculate"
        stage: stage

        function init() {
            stage.test.beginWithBarrels(3, 1)
            stage.raise("")
            settle()
            stage.app.openBarrel(stage.app.due.barrels.data(stage.app.due.barrels.index(0, 0), Qt.UserRole))
            settle()
            tap("calculate")
            tryCompare(stage.app.navigator, "page", Navigator.Calculate)
        }
        function choose(title) {
            const index = stage.calculating.titles.indexOf(title)
            verify(index >= 0, title + " is not offered: " + stage.calculating.titles)
            tap("calculator" + index)
            compare(stage.calculating.title, title)
        }
        // The value of the answer with that label, as it is shown.
        function answer(label) {
            const rows = stage.calculating.answers
            for (let row = 0; row < rows.rowCount(); ++row) {
                if (rows.data(rows.index(row, 0), FactRows.Label) === label) {
                    return rows.data(rows.index(row, 0), FactRows.Value)
                }
            }
            return ""
        }
        function input(name, role) {
            const rows = stage.calculating.inputs
            for (let row = 0; row < rows.rowCount(); ++row) {
                if (rows.data(rows.index(row, 0), AskRows.Name) === name) {
                    return rows.data(rows.index(row, 0), role)
                }
            }
            return undefined
        }

        function test_more_pressure_purges_faster() {
            verify(stage.calculating.barrelName.length > 0)
            choose("Purging a barrel")
            verify(stage.calculating.caution.length > 0)
            const before = parseFloat(answer("Time"))
            verify(before > 0, answer("Time"))
            verify(texts().indexOf(answer("Time")) >= 0, texts())
            const pressure = parseFloat(input("pressure", AskRows.Readout))
            tap("moreTen", need("number_pressure"))
            verify(parseFloat(input("pressure", AskRows.Readout)) > pressure + 0.4) // ten steps of 0.05 bar
            verify(parseFloat(answer("Time")) < before, answer("Time") + " is not less than " + before)
        }
        function test_the_barrels_own_values() {
            choose("Oxygen taken up")
            compare(input("time", AskRows.Readout), "250") // days since the test barrels were filled
            compare(input("time", AskRows.Unit), "days")
        }
        function test_us_units() {
            choose("Purging a barrel")
            compare(input("pressure", AskRows.Unit), "bar")
            const litres = parseFloat(input("volume", AskRows.Readout))
            stage.app.settings.usUnits = true
            settle()
            compare(input("pressure", AskRows.Unit), "psi")
            compare(input("pressure", AskRows.Readout), "5.0")
            verify(Math.abs(parseFloat(input("volume", AskRows.Readout)) * 3.785411784 - litres) < 1)
            verify(/ lb$/.test(answer("Gas used")), answer("Gas used"))
            tap("more", need("number_pressure"))
            compare(input("pressure", AskRows.Readout), "5.5")
            stage.app.settings.usUnits = false
        }
        function test_where_it_comes_from() {
            choose("Purging a barrel")
            verify(shown("source0") === null)
            tap("sources")
            verify(need("source0").text.indexOf("Saint-Venant") > 0, need("source0").text)
            tap("toHandbook")
            compare(stage.app.navigator.page, Navigator.Handbook)
            verify(stage.app.handbook.current >= 0, stage.calculating.handbook + " is not in the handbook")
            tap("back")
            compare(stage.app.navigator.page, Navigator.Calculate)
            compare(stage.calculating.title, "Purging a barrel")
            tap("back") // to the list, then to the barrel
            compare(stage.app.navigator.page, Navigator.Calculate)
            compare(stage.calculating.current, -1)
            tap("back")
            compare(stage.app.navigator.page, Navigator.Barrel)
        }
        function test_what_is_missing_and_out_of_range() {
            choose("Gauging a barrel")
            verify(stage.calculating.missing.length > 0) // a dip or a weight
            compare(stage.calculating.answers.rowCount(), 0)
            tap("more", need("number_dip"))
            compare(stage.calculating.missing, "")
            verify(answer("In the barrel").length > 0)
            for (let taps = 0; taps < 30 && stage.calculating.error.length === 0; ++taps) {
                tap("moreTen", need("number_dip"))
            }
            verify(/^Wet length of the stick: \d+ mm .* It can be 0 to [56]\d\d(\.\d)? mm\.$/.test(stage.calculating.error),
                   stage.calculating.error)
            compare(stage.calculating.answers.rowCount(), 0)
            verify(need("error").visible)
            tap("forget_dip")
            compare(stage.calculating.error, "")
            verify(stage.calculating.missing.length > 0)
        }
        function test_a_choice_of_words() {
            choose("Priming with sugar")
            if (input("volume", AskRows.Empty)) {
                tap("more", need("number_volume"))
            }
            const before = answer("Sugar")
            verify(parseFloat(before) > 0, stage.calculating.missing)
            compare(input("sugar", AskRows.Choice), 0)
            tap("chip1", need("words_sugar"))
            compare(input("sugar", AskRows.Choice), 1)
            verify(parseFloat(answer("Sugar")) > 0)
            verify(answer("Sugar") !== before)
        }
    }
}
