import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// Works a flight of three barrels by touch: one of them suspect, one poured twice.
Finger {
    id: finger

    readonly property FlightViewModel flight: finger.stage.test.app?.flight ?? null
    readonly property TastingViewModel tasting: finger.stage.test.app?.tasting ?? null

    function begin(width, height) {
        finger.stage.width = width
        finger.stage.height = height
        finger.stage.test.beginWithBarrels(3, 1)
        finger.stage.test.tellFault("Rum 2", "vinegar")
        finger.stage.raise("")
        settle()
        finger.stage.test.app.people.choose(0)
        tap("bar2")
    }
    // All that is written or spoken on the stage.
    function told() {
        return texts() + "\n" + finger.stage.test.allNames(finger.stage)
    }
    function verifyBlind(where) {
        verify(finger.stage.test.app.blind || finger.stage.test.app.navigator.page === Navigator.WasHere
               || finger.stage.test.app.navigator.page === Navigator.Today, where + ": not blind")
        for (const name of ["Rum", "Night Ferry", finger.stage.test.codeOf("Rum 1"), finger.stage.test.codeOf("Rum 2"),
                            finger.stage.test.codeOf("Rum 3"), "vanilla 3", "early days"]) {
            verify(!told().includes(name), name + " is told " + where + ": " + told())
        }
    }
    function drawAll(upTo) {
        const drawn = []
        for (let i = 0; i < upTo; ++i) {
            compare(flight.stage, FlightViewModel.Drawing)
            drawn.push({ barrel: flight.barrelName, glass: flight.glass, suspect: flight.suspect })
            tap("drawn")
        }
        return drawn
    }
    function choose() {
        tap("flight")
        tap("barrel0")
        tap("barrel1")
        tap("barrel2")
        tap("twice")
        tap("begin")
    }
    // Scores the sheet that is open, goes through all of it and closes it.
    function score(value) {
        tap("rung" + value)
        while (!tasting.last) {
            verifyBlind("on " + tasting.title)
            tasting.next()
            settle()
        }
        verifyBlind("before closing")
        tap("close")
    }
    function tasteAll(value) {
        const order = []
        for (let glass = 0; glass < 4; ++glass) {
            verifyBlind("before a glass")
            compare(flight.stage, FlightViewModel.NextGlass)
            order.push(flight.glass)
            tap("tasteGlass")
            verify(told().includes(flight.glass))
            score(value)
        }
        return order
    }
}
