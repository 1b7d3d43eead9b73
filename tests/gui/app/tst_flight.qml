import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A flight by touch, by two tasters. While it is tasted, no barrel is named anywhere in the item tree.
AppStage {
    id: stage

    FlightFinger {
        name: "Flight"
        stage: stage

        function test_a_flight_data() {
            return [{ tag: "phone", w: 390, h: 844 }, { tag: "three columns", w: 1280, h: 800 }]
        }
        function test_a_flight(data) {
            begin(data.w, data.h)
            choose()
            // Which is drawn: the clean ones first, one of them twice, the suspect one last.
            const drawn = drawAll(4)
            compare(drawn.filter(glass => glass.suspect).map(glass => glass.barrel).join(), "Rum 2")
            compare(drawn[3].barrel, "Rum 2")
            const clean = drawn.slice(0, 3).map(glass => glass.barrel)
            verify(clean.includes("Rum 1") && clean.includes("Rum 3"), clean.join())
            verify(clean[0] === clean[1] || clean[1] === clean[2], "the second glass comes right after the first")
            const numbers = drawn.map(glass => Number(glass.glass))
            verify(numbers.every(number => number >= 101 && number <= 999))
            compare(new Set(numbers).size, 4)

            compare(flight.stage, FlightViewModel.Tasters)
            verifyBlind("when asked who tastes")
            tap("taster0")
            const ada = tasteAll(7)
            compare(ada.slice().sort().join(), drawn.map(glass => glass.glass).sort().join())
            compare(ada[3], drawn[3].glass, "the suspect one is tasted last")

            // Ada has tasted all: she sees what was in each glass, and compares.
            compare(flight.stage, FlightViewModel.Tasted)
            verify(!stage.test.app.blind)
            for (const glass of drawn) {
                verify(texts().includes("Glass " + glass.glass))
            }
            verify(texts().includes("Rum 2"))
            tap("revealed0")
            compare(stage.test.app.navigator.page, Navigator.Compare)
            compare(stage.test.app.comparing.barrelName, drawn[0].barrel)
            tap("more0")
            tap("done")

            // The next taster sees nothing of it.
            tap("nextTaster")
            verifyBlind("for the next taster")
            tap("otherTaster")
            write("newName", "Kim")
            tap("addPerson")
            compare(flight.stage, FlightViewModel.Tasters)
            tap("taster1")
            const kim = tasteAll(3)
            verify(kim.join() !== ada.join(), "each has an order of their own")
            compare(flight.stage, FlightViewModel.Tasted)

            if (data.tag === "phone") {
                verifyRecords(drawn)
            }
        }
        // As the desk reads them.
        function verifyRecords(drawn) {
            stage.test.app.openDayFile()
            settle()
            tap("write")
            tap("target0")
            stage.test.desk(["join", stage.test.stickFiles()[0]])
            const flights = JSON.parse(stage.test.desk(["show", "flights"]))
            compare(flights.length, 1)
            compare(flights[0].person, "Ada")
            compare(flights[0].glasses.map(glass => glass.mark).join(), drawn.map(glass => glass.barrel).join())
            compare(flights[0].glasses.map(glass => String(glass.glass)).join(), drawn.map(glass => glass.glass).join())
            verify(flights[0].glasses.every(glass => glass.drawn && glass.tasted_by.slice().sort().join() === "Ada,Kim"))
            compare(flights[0].glasses.map(glass => glass.clean).join(), "true,true,true,false")
            compare(JSON.parse(stage.test.desk(["check"])).problems.length, 0)
        }
    }
}
