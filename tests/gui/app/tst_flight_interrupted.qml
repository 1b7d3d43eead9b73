import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A flight that is interrupted goes on where it was; and nothing around it tells what is in a glass.
AppStage {
    id: stage

    FlightFinger {
        name: "FlightInterrupted"
        stage: stage

        function test_going_on() {
            begin(390, 844)
            choose()
            drawAll(2)
            const glass = flight.glass
            stage.lower()
            stage.test.restart()
            stage.raise("")
            settle()
            // You were here: the flight that is not all drawn.
            compare(stage.test.app.navigator.page, Navigator.WasHere)
            tap("goOnFlight0")
            compare(flight.stage, FlightViewModel.Drawing)
            compare(flight.glass, glass)
            // A glass that cannot be drawn is left out, and that can be taken back.
            tap("leaveOut")
            verify(flight.glass !== glass)
            tap("undo", need("notice"))
            compare(flight.glass, glass)
            drawAll(2)

            tap("taster0")
            const first = flight.glass
            tap("tasteGlass")
            tap("rung7")
            stage.lower()
            stage.test.restart()
            stage.raise("")
            settle()
            compare(stage.test.app.navigator.page, Navigator.WasHere)
            verifyBlind("where the taster was")
            verify(texts().includes("Glass " + first))
            tap("goOn0")
            compare(tasting.value, 7)
            verifyBlind("on the sheet that was gone on with")
            score(5)
            compare(flight.stage, FlightViewModel.NextGlass)
            verify(flight.glass !== first)
        }
        function test_nothing_is_told_around_it() {
            begin(390, 844)
            choose()
            drawAll(4)
            tap("taster0")
            tap("tasteGlass")
            const glass = tasting.barrelName
            score(5)
            // The journal of today names the glass, not the barrel.
            stage.test.app.navigator.go(Navigator.Today)
            settle()
            verifyBlind("in the journal")
            verify(texts().includes(glass + ": "), texts())
            // The scores of its barrels are hidden everywhere.
            stage.test.app.openBarrel(stage.test.idOf("Rum 1"))
            settle()
            verify(stage.test.app.barrel.scoresHidden)
            verify(!texts().includes("vanilla 3"))
            // Until the flight is over.
            stage.test.app.navigator.go(Navigator.Today)
            settle()
            tap("flight")
            tap("goOnFlight0")
            compare(flight.stage, FlightViewModel.Tasters)
            const pad = need("endFlight")
            bringIntoView(pad)
            const touch = touchEvent(pad)
            touch.press(0, pad).commit()
            wait(900)
            touch.release(0, pad).commit()
            settle()
            compare(stage.test.app.openFlights.count, 0)
            stage.test.app.openBarrel(stage.test.idOf("Rum 1"))
            settle()
            tryVerify(() => !stage.test.app.barrel.scoresHidden)
            verify(texts().includes("vanilla 3"))
        }
    }
}
