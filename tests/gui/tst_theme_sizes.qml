import QtQuick
import QtTest
import Spile.Theme

Item {
    id: page

    // One line of text with letters above and below, as on a pad.
    Text {
        id: line
        text: "Åg"
    }
    Text {
        id: manyLines
        text: new Array(20).fill("Åg").join("\n")
        font: Theme.body
    }

    TestCase {
        name: "ThemeSizes"
        when: windowShown

        function init() {
            Theme.unitsPerMm = 6.04 // a phone of 460 dots per inch with three to a pixel
            Theme.textScale = 1
            Theme.pads = Theme.Usual
        }

        function heightOf(asked: font): real {
            line.font = asked
            return line.implicitHeight
        }

        function test_millimetres_become_whole_pixels() {
            compare(Theme.mm(10), 60)
            compare(Theme.mm(0), 0)
            fuzzyCompare(Theme.rung, 78.5, 0.5)
            fuzzyCompare(Theme.pad, 90.6, 0.5)
            fuzzyCompare(Theme.main, 96.6, 0.5)
            fuzzyCompare(Theme.row, 84.6, 0.5)
            compare(Theme.gap, 12)
            compare(Theme.margin, 18)
            compare(Theme.keepOut, 18)
            compare(Theme.padWidth, 109)
            compare(Theme.focusRing, 4)
            compare(Theme.outline, 2)
            compare(Theme.corner, 9)
            compare(Theme.notchEdge, 30)
            compare(Theme.lowWindow, 755)
        }

        function test_screens_that_claim_nonsense_are_not_believed_data() {
            return [{ tag: "phone", density: 6.42, units: 6.42 }, { tag: "too coarse", density: 3.94, units: 5.8 },
                    { tag: "too fine", density: 18, units: 7 }, { tag: "none", density: 0, units: 6.3 },
                    { tag: "negative", density: -6, units: 6.3 }, { tag: "no number", density: NaN, units: 6.3 },
                    { tag: "infinite", density: Infinity, units: 7 }]
        }
        function test_screens_that_claim_nonsense_are_not_believed(data) {
            compare(Theme.unitsOf(data.density), data.units)
        }

        function test_pads_are_large_enough_for_a_thumb_data() {
            return [5.8, 6.04, 6.3, 6.42, 7].map(units => ({ tag: units.toString(), units: units }))
        }
        function test_pads_are_large_enough_for_a_thumb(data) {
            Theme.unitsPerMm = data.units
            for (const pad of ["rung", "pad", "main", "row"]) {
                verify(Theme[pad] >= 12.9 * data.units, pad + " is " + Theme[pad] / data.units + " mm")
            }
            verify(Theme.padWidth >= 17 * data.units)
            verify(Theme.gap >= 1.9 * data.units)
            verify(Theme.margin >= 2.9 * data.units)
        }

        function test_pads_grow_and_shrink_with_their_use_data() {
            return [{ tag: "usual", pads: Theme.Usual, rung: 13, gap: 2 },
                    { tag: "wet", pads: Theme.Wet, rung: 16, gap: 4 },
                    { tag: "low", pads: Theme.Low, rung: 10.5, gap: 2 },
                    { tag: "desk", pads: Theme.Desk, rung: 9, gap: 2 }]
        }
        function test_pads_grow_and_shrink_with_their_use(data) {
            Theme.pads = data.pads
            compare(Theme.rung, Theme.mm(data.rung))
            compare(Theme.gap, Theme.mm(data.gap))
        }

        function test_text_is_as_large_as_was_set_data() {
            return [{ tag: "100 %", scale: 1, label: 17, body: 20, glance: 30, readout: 56 },
                    { tag: "130 %", scale: 1.3, label: 22, body: 26, glance: 39, readout: 73 },
                    { tag: "200 %", scale: 2, label: 34, body: 40, glance: 60, readout: 112 },
                    { tag: "less than 100 %", scale: 0.5, label: 17, body: 20, glance: 30, readout: 56 },
                    { tag: "more than 200 %", scale: 3, label: 34, body: 40, glance: 60, readout: 112 }]
        }
        function test_text_is_as_large_as_was_set(data) {
            Theme.textScale = data.scale
            compare(Theme.label.pixelSize, data.label)
            compare(Theme.body.pixelSize, data.body)
            compare(Theme.strongBody.pixelSize, data.body)
            compare(Theme.glance.pixelSize, data.glance)
            compare(Theme.strongGlance.pixelSize, data.glance)
            compare(Theme.code.pixelSize, data.glance)
            compare(Theme.readout.pixelSize, data.readout)
            compare(Theme.timer.pixelSize, 96)
        }

        function test_lines_are_a_quarter_apart() {
            // By the font's own measure, so that no text has to ask for it.
            fuzzyCompare(manyLines.implicitHeight / 20 / Theme.body.pixelSize, 1.25, 0.05)
        }

        function test_no_pad_is_lower_than_its_text_data() {
            const rows = []
            for (const pads of ["Usual", "Wet", "Low", "Desk"]) {
                for (const scale of [1, 1.3, 1.6, 2]) {
                    rows.push({ tag: pads + ", " + scale * 100 + " %", pads: Theme[pads], scale: scale })
                }
            }
            return rows
        }
        function test_no_pad_is_lower_than_its_text(data) {
            Theme.pads = data.pads
            Theme.textScale = data.scale
            for (const type of ["label", "body", "strongBody", "glance", "strongGlance", "code"]) {
                const height = heightOf(Theme[type])
                for (const pad of ["rung", "pad", "main"]) {
                    verify(Theme[pad] >= height, type + " of " + height + " on " + pad + " of " + Theme[pad])
                }
            }
            verify(Theme.row >= heightOf(Theme.code) + heightOf(Theme.body), "two lines in a row of " + Theme.row)
        }
    }
}
