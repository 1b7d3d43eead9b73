import QtQuick
import QtTest
import Spile.Theme

Item {
    id: page

    Text {
        id: sample
        text: "7K2-QFM" // without any, it takes no font
    }
    TextMetrics { id: measured }

    TestCase {
        name: "ThemeFonts"
        when: windowShown

        function widthOf(text: string): real {
            measured.text = text
            return measured.advanceWidth
        }

        function test_fonts_come_from_the_module_data() {
            return [{ tag: "regular", face: Theme.typefaces.regular, family: "Inter", weight: Font.Normal },
                    { tag: "semiBold", face: Theme.typefaces.semiBold, family: "Inter", weight: Font.DemiBold },
                    { tag: "bold", face: Theme.typefaces.bold, family: "Inter", weight: Font.Bold },
                    { tag: "numerals", face: Theme.typefaces.numerals, family: "B612", weight: Font.Bold }]
        }
        function test_fonts_come_from_the_module(data) {
            verify(Theme.typefaces.ready)
            compare(data.face.family, data.family)
            compare(data.face.weight, data.weight)
        }

        function test_text_is_drawn_with_the_font_that_was_asked_for_data() {
            return [{ tag: "label", family: "Inter", weight: Font.DemiBold },
                    { tag: "body", family: "Inter", weight: Font.Normal },
                    { tag: "strongBody", family: "Inter", weight: Font.Bold },
                    { tag: "glance", family: "Inter", weight: Font.Normal },
                    { tag: "strongGlance", family: "Inter", weight: Font.Bold },
                    { tag: "code", family: "B612", weight: Font.Bold },
                    { tag: "readout", family: "B612", weight: Font.Bold },
                    { tag: "timer", family: "B612", weight: Font.Bold }]
        }
        function test_text_is_drawn_with_the_font_that_was_asked_for(data) {
            sample.font = Theme[data.tag]
            compare(sample.fontInfo.family, data.family)
            compare(sample.fontInfo.weight, data.weight)
            compare(sample.fontInfo.pixelSize, Theme[data.tag].pixelSize)
        }

        function test_numerals_are_of_one_width_data() {
            return [{ tag: "code" }, { tag: "readout" }, { tag: "timer" }]
        }
        function test_numerals_are_of_one_width(data) {
            measured.font = Theme[data.tag]
            const widths = Array.from("0123456789").map(digit => widthOf(digit))
            verify(widths[0] > 0)
            compare(widths, new Array(10).fill(widths[0]))
        }
        function test_a_running_timer_stands_still() {
            measured.font = Theme.timer
            const width = widthOf("00:00")
            for (const time of ["11:11", "17:40", "41:14", "57:07", "59:59"]) {
                compare(widthOf(time), width, time)
            }
        }
        function test_points_and_colons_leave_no_hole_in_a_number_data() {
            return [{ tag: "readout" }, { tag: "timer" }]
        }
        function test_points_and_colons_leave_no_hole_in_a_number(data) {
            measured.font = Theme[data.tag]
            for (const mark of [".", ",", ":"]) {
                verify(widthOf("1" + mark + "5") - widthOf("15") <= 0.5 * widthOf("0"), mark)
            }
        }
    }
}
