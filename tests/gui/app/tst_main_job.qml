import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The whole main job by touch, from an empty phone to a day file that the desk takes in.
AppStage {
    id: stage

    Finger {
        name: "MainJob"
        stage: stage

        function test_from_an_empty_cellar_to_the_desk() {
            stage.test.beginEmpty()
            stage.raise("file://" + stage.test.samplePicture())
            settle()

            // Register a barrel that has been full for eight months.
            tap("registerFirst")
            write("mark", "Rum 3")
            tap("chip2", need("spirits"))
            tap("chip4", need("sizes"))
            tap("chip1", need("full"))
            for (let month = 0; month < 8; ++month) {
                tap("monthEarlier")
            }
            write("newBeer", "Night Ferry")
            tap("record")
            const code = need("code").text
            verify(/^[0-9A-Z]{3}-[0-9A-Z]{3}$/.test(code), code)
            tap("toBarrel")
            compare(stage.test.app.barrel.name, "Rum 3")

            // Draw: nobody has said who they are yet.
            tap("next")
            write("newName", "Ada")
            tap("addPerson")
            tap("chip0", need("methods"))
            tap("more", need("volume"))
            tap("record")

            // Taste: all nine attributes, two taps for an even one.
            const tasting = stage.test.app.tasting
            compare(tasting.barrelName, "Rum 3")
            const scored = {}
            for (let step = 0; step < 9; ++step) {
                compare(tasting.step, TastingViewModel.Attribute)
                const rung = ["rung1", "rung3", "rung5", "rung7", "rung9"][step % 5]
                tap(rung)
                compare(tasting.value, Number(rung.slice(4)))
                if (step % 2 && tasting.value < 9) {
                    tap("more", need("ladder"))
                }
                scored[tasting.title] = tasting.value
                tap("next")
            }
            compare(tasting.step, TastingViewModel.Liking)
            tap("rung7")
            tap("next")
            tap("chip0", need("faults"))
            tap("next")
            tap("more", need("gravity"))
            tap("more", need("gravity"))
            compare(tasting.gravity, "1.021")
            tap("next")
            tap("chip1", need("noteChips"))
            write("note", " warm")
            tap("next")

            // Photograph the colour.
            compare(tasting.step, TastingViewModel.Close)
            tap("photo")
            tap("take")
            tryVerify(() => stage.test.app.photo.kept, 10000, "the photo was not kept")
            tap("back")
            compare(tasting.photos, 1)

            // Close, say a direction, and leave.
            tap("close")
            tap("more0")
            tap("done")

            // Hand over.
            tap("back")
            tap("bar2")
            tap("dayFile")
            tap("write")
            tap("target0")
            const files = stage.test.stickFiles()
            compare(files.length, 1)

            // The desk takes it in.
            stage.test.desk(["join", files[0]])
            const barrels = JSON.parse(stage.test.desk(["show", "barrels"]))
            compare(barrels.length, 1)
            compare(barrels[0].mark, "Rum 3")
            const shown = JSON.parse(stage.test.desk(["show", "barrel", code]))
            const tastings = shown.tastings
            compare(tastings.length, 1)
            compare(tastings[0].taster, "Ada")
            for (const attribute in scored) {
                compare(tastings[0].scores[attribute.toLowerCase()], scored[attribute], attribute)
            }
            compare(shown.photos.length, 1)
            compare(shown.draws.length, 1)
            compare(shown.readings[0].sg, 1.021)
            compare(JSON.parse(stage.test.desk(["check"])).problems.length, 0)
        }
    }
}
