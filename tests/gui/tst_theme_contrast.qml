import QtQuick
import QtTest
import Spile.Theme
import "colour_measures.js" as Measures

TestCase {
    name: "ThemeContrast"

    function init_data() {
        return [{ tag: "dark", colours: Theme.dark }, { tag: "light", colours: Theme.light },
                { tag: "night", colours: Theme.night }]
    }

    function verifyContrast(colours: PaletteTokens, one: string, other: string, least: real) {
        const ratio = Measures.contrast(colours[one], colours[other])
        verify(ratio >= least, one + " on " + other + ": " + ratio.toFixed(2) + " instead of " + least)
    }

    function test_text_keeps_7_to_each_ground(data) {
        for (const ground of ["ground0", "ground1", "ground2"]) {
            verifyContrast(data.colours, "text", ground, 7)
            verifyContrast(data.colours, "secondText", ground, 7)
        }
    }
    function test_text_keeps_7_to_the_band(data) {
        verifyContrast(data.colours, "text", "band", 7)
    }
    function test_text_on_your_move_is_readable(data) {
        // Light brass is dark: text on it is bold and large, for which 4.5 is the level that 7 is for other text.
        verifyContrast(data.colours, "actText", "act", data.tag === "light" ? 4.5 : 7)
    }
    function test_marks_keep_3_to_each_ground(data) {
        // On paper, brass and slate are no marks on ground2.
        const notOnDarkPaper = ["act", "due", "resting", "line", "bandEdge"]
        for (const mark of ["act", "resting", "soon", "due", "overdue", "held", "line", "focus", "warning", "bandEdge",
                            "firstLine", "secondLine", "thirdLine"]) {
            verifyContrast(data.colours, mark, "ground0", 3)
            verifyContrast(data.colours, mark, "ground1", 3)
            if (data.tag !== "light" || !notOnDarkPaper.includes(mark)) {
                verifyContrast(data.colours, mark, "ground2", 3)
            }
        }
    }
    function test_lines_keep_3_to_the_band(data) {
        for (const line of ["firstLine", "secondLine", "thirdLine"]) {
            verifyContrast(data.colours, line, "band", 3)
        }
    }
    function test_grounds_follow_one_another(data) {
        const light = [data.colours.ground0, data.colours.ground1, data.colours.ground2].map(Measures.luminance)
        const away = data.tag === "light" ? -1 : 1
        verify((light[1] - light[0]) * away > 0)
        verify((light[2] - light[1]) * away > 0)
    }
    function test_photo_surround_is_neutral_and_middle(data) {
        const grey = data.colours.photoSurround
        compare(grey.r, grey.g)
        compare(grey.g, grey.b)
        fuzzyCompare(Measures.luminance(grey), 0.18, 0.005)
    }

    function test_palette_switches_the_colours_data() {
        return [{ tag: "dark", palette: Theme.Dark, colours: Theme.dark },
                { tag: "light", palette: Theme.Light, colours: Theme.light },
                { tag: "night", palette: Theme.Night, colours: Theme.night }]
    }
    function test_palette_switches_the_colours(data) {
        Theme.palette = data.palette
        compare(Theme.colours, data.colours)
        Theme.palette = Theme.Dark
    }
    function test_measure_is_that_of_wcag_data() { return [{ tag: "all" }] }
    function test_measure_is_that_of_wcag() {
        fuzzyCompare(Measures.contrast(Qt.color("black"), Qt.color("white")), 21, 1e-9)
        // WCAG 2, technique G18: #767676 is the lightest grey that keeps 4.5 to white.
        verify(Measures.contrast(Qt.color("#767676"), Qt.color("white")) >= 4.5)
        verify(Measures.contrast(Qt.color("#777777"), Qt.color("white")) < 4.5)
    }
}
