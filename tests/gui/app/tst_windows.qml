import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// What a beer should taste like, set by touch, and recorded once.
AppStage {
    id: stage

    Finger {
        name: "Windows"
        stage: stage

        function line(index) {
            return shown("window" + index).Accessible.name.split(": ").slice(1).join(": ")
        }
        function openPage() {
            stage.test.app.openBarrel(stage.test.idOf("Rum 1"))
            settle()
            tap("windows")
            compare(stage.test.app.navigator.page, Navigator.Windows)
        }
        function unsent() {
            stage.test.app.navigator.go(Navigator.Today)
            settle()
            return stage.test.app.dayFile.shortText
        }
        function test_set_and_clear() {
            stage.test.beginWithBarrels(2, 1)
            stage.raise("")
            settle()
            const before = parseInt(unsent())
            openPage()
            compare(line(0), "No window")
            verify(!shown("from0"))
            tap("toggle0")
            compare(line(0), "4 to 6: over slight to over clear")
            tap("less", shown("from0"))
            tap("less", shown("from0"))
            tap("more", shown("to0"))
            compare(line(0), "2 to 7: over none to strong")
            // Low never comes over high.
            for (let i = 0; i < 5; ++i) {
                tap("more", shown("from0"))
            }
            compare(line(0), "7: strong")
            verify(!shown("more", shown("from0")).enabled)
            verify(!shown("less", shown("to0")).enabled)
            tap("toggle1")
            tap("toggle1")
            compare(line(1), "No window")
            tap("toggle1")
            tap("done")
            settle()
            compare(parseInt(unsent()), before + 2, "a target, and the batch that gets it")

            // The other barrel of this beer has them too; leaving without a change records nothing.
            stage.test.app.openBarrel(stage.test.idOf("Rum 2"))
            settle()
            tap("windows")
            compare(line(0), "7: strong")
            compare(line(1), "4 to 6: over slight to over clear")
            tap("done")
            settle()
            compare(parseInt(unsent()), before + 2)

            // Back keeps as well; what is taken off is gone.
            openPage()
            tap("toggle1")
            stage.test.app.goBack()
            settle()
            compare(parseInt(unsent()), before + 3)
            openPage()
            compare(line(0), "7: strong")
            compare(line(1), "No window")
        }
        function test_a_barrel_without_a_beer_has_none() {
            stage.test.beginWithBarrels(1, 0)
            stage.test.addBarrelOfUnknownBeer("Rum 9")
            stage.raise("")
            settle()
            stage.test.app.openBarrel(stage.test.idOf("Rum 9"))
            settle()
            tap("windows")
            verify(texts().includes("Nobody has said which beer"))
            verify(!shown("toggle0"))
        }
    }
}
