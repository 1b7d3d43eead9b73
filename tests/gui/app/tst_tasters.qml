import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// What the tasters are like, reached from where one says who one is; and back.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app

    Finger {
        name: "Tasters"
        stage: stage

        function begin(tastings) {
            stage.test.beginWithBarrels(3, tastings)
            stage.raise("")
            settle()
            stage.app.people.choose(0)
            settle()
            stage.app.navigator.open(Navigator.People)
            settle()
            tap("howWeTaste")
            tryCompare(stage.app.navigator, "page", Navigator.Tasters)
            tryVerify(() => stage.app.tasters.loaded, 20000, "the records are not read")
            settle()
        }

        function test_each_taster_and_each_attribute_is_told() {
            begin(4)
            verify(/^Needs 10 more /.test(need("tasterTold0").text), need("tasterTold0").text)
            verify(/Ada/.test(need("taster0").Accessible.name))
            verify(/^Too few beers/.test(need("attributeTold1").text), need("attributeTold1").text)
            verify(!shown("nobody"))
        }
        function test_the_handbook_comes_back_here() {
            begin(4)
            tap("toHandbook")
            tryCompare(stage.app.navigator, "page", Navigator.Handbook)
            compare(stage.app.handbook.title, "Tasters")
            stage.app.goBack()
            tryCompare(stage.app.navigator, "page", Navigator.Tasters)
            stage.app.goBack()
            tryCompare(stage.app.navigator, "page", Navigator.People)
        }
        function test_nobody_has_scored() {
            begin(0)
            need("nobody")
            verify(!shown("taster0") && !shown("attribute0"))
        }
    }
}
