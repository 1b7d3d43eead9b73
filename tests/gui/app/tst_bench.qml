import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The bench by touch: from the question to the accepted glass and its lot.
AppStage {
    id: stage

    Finger {
        name: "Bench"
        stage: stage

        readonly property BenchViewModel bench: stage.test.app ? stage.test.app.bench : null
        readonly property BenchGlassesViewModel glasses: stage.test.app ? stage.test.app.glasses : null

        function begin(barrels) {
            stage.test.beginWithBarrels(barrels, 2)
            stage.raise("")
            stage.test.app.navigator.go(Navigator.Today)
            settle()
            tap("openBench")
            compare(stage.test.app.navigator.page, Navigator.Bench)
        }
        function look() {
            tap("search")
            tryVerify(() => bench.stage === BenchViewModel.Answers, 20000)
            settle()
        }
        function mixAll() {
            while (glasses.stage === BenchGlassesViewModel.Mixing) {
                verify(!need("nextGlass").enabled, "before all is measured")
                for (let step = 0; step < glasses.recipe.rowCount(); ++step) {
                    tap("measure" + step)
                }
                tap("nextGlass")
            }
        }
        function scoreGlass(value) {
            while (!glasses.lastAsked) {
                tap("rung" + value)
                tap("next")
            }
            tap("rung7")
            tap("next")
        }
        function test_from_the_question_to_the_lot() {
            begin(4)
            verify(!need("search").enabled, "without a window nothing is looked for")
            tap("toggle0")
            tap("part")
            tap("moreBarrels")
            look()
            verify(shown("proof").text.startsWith("Every set of barrels was looked at"), shown("proof").text)
            verify(shown("answer1"), "there is a second answer")
            verify(texts().includes("8 in 10 that it lies there"))
            verify(!need("pour").enabled, "one glass is no bench")
            tap("pick")
            tap("answer1")
            tap("pick")
            verify(bench.pickedText.startsWith("Mix 2"), bench.pickedText)
            const records = stage.test.recordCount()
            tap("pour")
            compare(stage.test.app.navigator.page, Navigator.BenchGlasses)
            compare(stage.test.recordCount(), records + 1)

            mixAll()
            compare(glasses.stage, BenchGlassesViewModel.Tasters)
            tap("taster0")
            compare(glasses.stage, BenchGlassesViewModel.SettingOut)
            verify(texts().includes("looks away"))
            tap("beginTasting")
            // Blind: only a letter; nothing of what is in it, and no list beside.
            verify(stage.test.app.blind)
            for (const name of ["Rum ", "Glass 1", "Glass 2", " mL"]) {
                verify(!texts().includes(name), name + " is told: " + texts())
            }
            compare(glasses.letter, "A")
            scoreGlass(5)
            compare(glasses.letter, "B")
            compare(glasses.stage, BenchGlassesViewModel.Scoring)
            scoreGlass(3)
            compare(glasses.stage, BenchGlassesViewModel.Scores)
            verify(!stage.test.app.blind)
            verify(texts().includes("Ada: "))
            verify(texts().includes(" mL of Rum"))
            compare(stage.test.recordCount(), records + 3)

            // Accepted only tasted cold and carbonated, and it says why not.
            tap("scored0")
            verify(!need("accept").enabled)
            verify(texts().includes("Not before it was tasted cold"))
            tap("cold")
            verify(!need("accept").enabled)
            verify(texts().includes("Not before it was tasted carbonated"))
            tap("carbonated")
            tap("accept")
            tryCompare(glasses, "stage", BenchGlassesViewModel.Tank)
            verify(shown("tankText").text.startsWith("Glass 1 was accepted"))
            verify(shown("tank0"))
            tap("makeLot")
            tryVerify(() => stage.test.app.navigator.page === Navigator.Lot)
            compare(stage.test.recordCount(), records + 5)

            // The bench stands in the list, and leads to the same lot; no second one is made.
            stage.test.app.navigator.go(Navigator.Today)
            settle()
            tap("openBench")
            verify(texts().includes("a glass is accepted"))
            tap("bench0")
            tryCompare(glasses, "made", true)
            tap("makeLot")
            tryVerify(() => stage.test.app.navigator.page === Navigator.Lot)
            compare(stage.test.recordCount(), records + 5)
        }
        function test_what_is_in_the_way_is_said() {
            begin(2)
            tap("toggle0")
            tap("more", need("limit2")) // strength at least: asks for a value to begin from
            for (let i = 0; i < 12; ++i) {
                bench.stepLimit(BenchViewModel.StrengthLeast, 10)
            }
            settle()
            look()
            verify(shown("inTheWay0"), "nothing is said")
            verify(texts().includes("asked for at least 22.0 % vol"), texts())
            verify(!shown("pick"))
            tap("again")
            tap("clearLimits")
            look()
            verify(shown("answer0"))
        }
        function test_a_barrel_kept_back_is_not_used() {
            begin(2)
            tap("toggle0")
            const kept = bench.barrels[0]
            tap("chip0", need("kept"))
            look()
            verify(shown("answer0"))
            verify(!shown("openTitle").text.includes(kept))
        }
        function test_leaving_ends_the_search() {
            begin(2)
            tap("toggle0")
            bench.search()
            compare(bench.stage, BenchViewModel.Searching)
            bench.stop()
            tryVerify(() => bench.stage !== BenchViewModel.Searching)
            settle()
            bench.search()
            stage.test.app.goBack()
            settle()
            compare(bench.stage, BenchViewModel.Asking)
            compare(stage.test.app.navigator.page, Navigator.Today)
        }
    }
}
