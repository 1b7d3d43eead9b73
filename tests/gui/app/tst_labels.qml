import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// From a barrel, from its registration and from Today to a file of labels on the memory stick.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    Finger {
        name: "Labels"
        stage: stage

        function labels() { return stage.app.labels }
        function begin(barrels) {
            stage.test.beginWithBarrels(barrels, 0)
            stage.raise("")
            settle()
        }
        function textOf(mark) { return "S1TEST" + stage.test.codeOf(mark).replace("-", "") }
        function tapIn(group, pad) { tap(pad, need(group)) }
        function openFromToday() {
            stage.app.navigator.go(Navigator.Today)
            settle()
            tap("labels")
            tryCompare(stage.app.navigator, "page", Navigator.Labels)
            tryVerify(() => labels().loaded && labels().picture.length > 0)
            settle()
        }
        function writeFile() {
            tap("write")
            tryVerify(() => labels().fileName.length > 0 || labels().error.length > 0)
            settle()
        }

        function test_all_barrels_go_into_a_file() {
            begin(3)
            openFromToday()
            compare(labels().countText, "3 label(s) on 1 page(s)")
            verify(!shown("done"))
            writeFile()
            need("done")
            compare(stage.test.stickFiles().length, 1)
            const file = stage.test.stickFiles()[0]
            compare(labels().filePath, file)
            compare(need("file").text, labels().fileName)
            verify(/^labels-TEST-2026-11-25-.*\.pdf$/.test(labels().fileName), labels().fileName)
            verify(/^3 label\(s\) on 1 page\(s\), .* in Stick\.$/.test(need("fileText").text), need("fileText").text)
            const expected = []
            for (const mark of ["Rum 1", "Rum 2", "Rum 3"]) {
                expected.push(textOf(mark), textOf(mark)) // two symbols on each plate
            }
            compare(stage.test.symbolsIn(file).sort(), expected.sort())
        }
        function test_a_barrels_page_leads_to_its_label() {
            begin(2)
            stage.app.openBarrel(stage.test.idOf("Rum 2"))
            settle()
            tap("labels")
            tryCompare(stage.app.navigator, "page", Navigator.Labels)
            tryCompare(labels(), "countText", "1 label(s) on 1 page(s)")
            compare(labels().subjects[0], "Rum 2")
            settle()
            writeFile()
            compare(stage.test.symbolsIn(stage.test.stickFiles()[0]), [textOf("Rum 2"), textOf("Rum 2")])
            stage.app.goBack()
            tryCompare(stage.app.navigator, "page", Navigator.Barrel)
        }
        function test_a_registered_barrel_gets_its_label() {
            begin(1)
            stage.app.registerBarrel("")
            stage.app.registering.mark = "Fässchen 7"
            stage.app.registering.record()
            settle()
            tap("label")
            tryCompare(stage.app.navigator, "page", Navigator.Labels)
            tryCompare(labels(), "countText", "1 label(s) on 1 page(s)")
            compare(labels().subjects[0], "Fässchen 7")
            stage.app.goBack()
            tryCompare(stage.app.navigator, "page", Navigator.Register)
        }
        function test_spare_codes_are_new_each_time() {
            begin(1)
            openFromToday()
            tapIn("subjects", "chip1")
            tapIn("spares", "less")
            tryCompare(labels(), "countText", "9 label(s) on 2 page(s)")
            writeFile()
            const first = stage.test.symbolsIn(stage.test.stickFiles()[0])
            compare(first.length, 18)
            compare(new Set(first).size, 9)
            verify(first.indexOf(textOf("Rum 1")) < 0)
            stage.test.passSeconds(2)
            writeFile()
            const second = stage.test.symbolsIn(stage.test.stickFiles()[1])
            verify(second.every(text => first.indexOf(text) < 0))
        }
        function test_a_stock_that_is_too_small_is_told_and_not_written() {
            begin(1)
            openFromToday()
            tapIn("kinds", "chip1")
            verify(!shown("problem"))
            labels().chooseStock(9)
            settle()
            need("problem")
            verify(/too small to be read from 60 cm\. They serve up to 55 cm\./.test(labels().problem), labels().problem)
            verify(!need("write").enabled)
            compare(labels().picture, "")
            tapIn("distance", "less")
            verify(!shown("problem"))
            verify(need("write").enabled)
        }
        function test_a_sheet_is_gone_on_with() {
            begin(3)
            openFromToday()
            tapIn("kinds", "chip1")
            labels().chooseStock(3)
            tapIn("from", "moreTen")
            compare(labels().from, "8")
            compare(labels().countText, "3 label(s) on 2 page(s)")
            tap("testPage")
            compare(labels().countText, "3 label(s) on 3 page(s)")
            writeFile()
            verify(/^3 label\(s\) on 3 page\(s\), /.test(labels().fileText), labels().fileText)
        }
        function test_a_full_stick_is_told() {
            begin(1)
            openFromToday()
            stage.test.fillDisk()
            writeFile()
            need("error")
            verify(/storage is full/.test(labels().error), labels().error)
            compare(stage.test.stickFiles().filter(file => /\.pdf$/.test(file)), [])
            stage.test.mendDisk()
            writeFile()
            verify(!shown("error"))
            need("done")
        }
        function test_another_choice_forgets_the_file() {
            begin(1)
            openFromToday()
            writeFile()
            need("done")
            tapIn("distance", "more")
            verify(!shown("done"))
            compare(labels().fileName, "")
        }
        function test_a_mark_that_cannot_be_printed_is_told() {
            begin(1)
            stage.lower()
            stage.test.addBarrelOfUnknownBeer("樽 3")
            stage.raise("")
            settle()
            openFromToday()
            writeFile()
            need("incomplete")
            verify(labels().incompleteText.indexOf("樽 3") > 0)
        }
        function test_distances_in_inches() {
            begin(1)
            stage.app.settings.usUnits = true
            openFromToday()
            compare(labels().distance, "24")
            compare(labels().distanceUnit, "in")
            tapIn("distance", "more")
            compare(labels().distance, "26")
            for (let i = 0; i < 5; ++i) {
                labels().stepDistance(10)
            }
            compare(labels().distance, "59")
            stage.app.settings.usUnits = false
        }
        function test_the_handbook_comes_back_here() {
            begin(1)
            openFromToday()
            tap("toHandbook")
            tryCompare(stage.app.navigator, "page", Navigator.Handbook)
            compare(stage.app.handbook.title, "Labels")
            stage.app.goBack()
            tryCompare(stage.app.navigator, "page", Navigator.Labels)
        }
    }
}
