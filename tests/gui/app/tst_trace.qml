import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// From a code up to barrels and down again, the recall list on the stick, and the sums for a return.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    Finger {
        name: "Trace"
        stage: stage

        function trace() { return stage.app.trace }
        function begin() {
            stage.test.beginWithBarrels(2, 0)
            stage.test.addLot("Tank 2", "Rum 1", "L-1")
            stage.raise("")
            settle()
            stage.app.people.choose(0)
            stage.app.navigator.go(Navigator.Today)
            settle()
        }
        function look(what) {
            tap("trace")
            tryCompare(stage.app.navigator, "page", Navigator.Trace)
            write("typed", what)
            tap("search")
            tryVerify(() => !trace().running)
            settle()
        }

        function test_a_code_is_traced_to_its_barrel_and_everything_in_it() {
            begin()
            look("l-1")
            compare(trace().name, "L-1")
            const up = texts()
            for (const said of ["Rum 1", "100 % · 60.0 L", "Night Ferry", "Held before: Rum", "Coconut, 1.50 kg",
                                "Allergen: coconut", "Ada"]) {
                verify(up.indexOf(said) >= 0, said + "\n" + up)
            }
            tap("chip1", need("ways"))
            verify(texts().indexOf("Left in the house: 120 × bottle 500 mL") >= 0)
            verify(texts().indexOf("Held before: Rum") < 0)
        }
        function test_from_a_barrel_of_the_trace_all_lots_are_found() {
            begin()
            stage.lower()
            stage.test.addLot("Tank 3", "Rum 2", "L-2")
            stage.raise("")
            settle()
            stage.app.navigator.go(Navigator.Today)
            settle()
            look("Tank 2")
            tap("act0", need("parts")) // of the barrel
            tryVerify(() => !trace().running)
            compare(trace().name, "Rum 1")
            compare(trace().ways.length, 1)
            verify(texts().indexOf("Tank 2: L-1") >= 0, texts())
            verify(texts().indexOf("Tank 3") < 0)
        }
        function test_the_recall_list_is_a_file() {
            begin()
            look("coconut")
            tap("recall")
            tryVerify(() => trace().fileName.length > 0 || trace().error.length > 0)
            compare(trace().error, "")
            verify(/^recall-coconut-2026-11-25-.*\.txt$/.test(trace().fileName), trace().fileName)
            const content = stage.test.contentOf(trace().filePath)
            compare(content, trace().recallText)
            verify(content.indexOf("Recall list: coconut") === 0)
            verify(content.indexOf("Tank 2: L-1") > 0, content)
            verify(content.indexOf("Left in the house: 120 × bottle 500 mL") > 0, content)
        }
        function test_a_full_stick_is_told() {
            begin()
            look("Tank 2")
            stage.test.fillDisk()
            tap("recall")
            tryVerify(() => trace().error.length > 0)
            verify(/storage is full/.test(trace().error), trace().error)
            compare(trace().fileName, "")
            stage.test.mendDisk()
        }
        function test_what_nobody_knows_is_told() {
            begin()
            look("Tank 99")
            compare(trace().error, "Nothing of that name or code is in the records.")
            compare(trace().name, "")
            verify(!shown("recall"))
        }
        function test_a_barrel_that_went_nowhere_says_so() {
            begin()
            stage.app.openBarrel(stage.test.idOf("Rum 2"))
            settle()
            tap("trace")
            tryVerify(() => !trace().running)
            compare(trace().name, "Rum 2")
            compare(trace().summary, "Nothing of it has come into a lot.")
        }
        function test_a_duty_return_has_its_sums() {
            begin()
            tap("reports")
            tryVerify(() => stage.app.reports.loaded)
            stage.app.reports.choosePeriod(2)
            tryVerify(() => stage.app.reports.loaded && texts().indexOf("60.0 L") >= 0)
            verify(texts().indexOf("Packaged: 60.0 L, 0.600 hL, 0.511 US barrels") >= 0, texts())
            verify(texts().indexOf("6.60 litres of alcohol") >= 0, texts())
            verify(texts().indexOf("Released: 0.0 L") >= 0)
            tap("chip1", need("reports"))
            tryVerify(() => texts().indexOf("Drawn as samples: ") >= 0)
        }
    }
}
