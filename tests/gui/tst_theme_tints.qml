import QtQuick
import QtTest
import Spile.Theme
import "colour_measures.js" as Measures

TestCase {
    name: "ThemeTints"

    function test_states_differ_for_each_eye_data() {
        const rows = []
        for (const eye in Measures.eyes) {
            rows.push({ tag: "dark, " + eye, colours: Theme.dark, eye: eye })
            rows.push({ tag: "light, " + eye, colours: Theme.light, eye: eye })
        }
        return rows
    }
    function test_states_differ_for_each_eye(data) {
        const names = ["resting", "soon", "due", "overdue", "held"]
        for (const one of names) {
            for (const other of names.slice(names.indexOf(one) + 1)) {
                const distance = Measures.distance(data.colours[one], data.colours[other], data.eye)
                verify(distance >= 0.10, one + " and " + other + ": " + distance.toFixed(3))
            }
        }
    }
    function test_night_has_one_tint() {
        for (const state of ["soon", "due", "overdue", "held"]) {
            compare(Theme.night[state], Theme.night.resting)
        }
    }
    function test_night_is_red() {
        for (const name of ["text", "secondText", "act", "resting", "line", "focus", "warning", "band", "firstLine"]) {
            const colour = Theme.night[name]
            verify(colour.r > colour.g && colour.g > colour.b, name)
        }
    }
    function test_measure_gives_known_distances() {
        const black = Qt.color("black")
        const white = Qt.color("white")
        for (const eye in Measures.eyes) {
            fuzzyCompare(Measures.distance(black, white, eye), 1, 1e-4)
        }
        // To an eye without green cones, this red and this green are near; to one that has them they are not.
        verify(Measures.distance(Qt.color("#a05a00"), Qt.color("#6f7400"), "deutan") < 0.05)
        verify(Measures.distance(Qt.color("#a05a00"), Qt.color("#6f7400"), "normal") > 0.10)
    }
}
