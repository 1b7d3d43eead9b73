import QtQuick
import QtTest
import Spile.Gallery
import Spile.Tests
import Spile.Theme

// The whole gallery, on every size of window and of text: nothing cut, nothing over anything else, nothing too small.
Item {
    id: window
    width: 1280
    height: 960

    LayoutAudit { id: audit }
    Gallery {
        id: gallery
        barShown: false
    }

    TestCase {
        name: "ComponentsLayout"
        when: windowShown

        readonly property list<size> sizes: [Qt.size(360, 640), Qt.size(390, 844), Qt.size(412, 915), Qt.size(600, 960),
            Qt.size(1280, 800)]
        // Narrower by their nature: four steppers in a row of a phone, and keys.
        readonly property list<string> narrowPads: ["Numbers", "Code"]

        function init() {
            Theme.unitsPerMm = 6.04
            audit.leastPadHeight = 0
            audit.leastPadWidth = 0
            audit.leastGap = 0
        }
        function show(page: int, size: size, scale: real, mirrored: bool) {
            gallery.width = size.width
            gallery.height = size.height
            gallery.page = page
            gallery.textScale = scale
            gallery.mirrored = mirrored
            waitForRendering(gallery)
        }
        function verifyPage() {
            const found = audit.findings(gallery)
            verify(found.length === 0, found.join("\n"))
        }

        function test_pads_are_large_and_apart_data() {
            const rows = []
            for (const size of sizes) {
                for (const page of gallery.pages) {
                    rows.push({ tag: page + " " + size.width + "x" + size.height, page: page, size: size })
                }
            }
            return rows
        }
        function test_pads_are_large_and_apart(data) {
            gallery.pads = Theme.Usual
            show(gallery.pages.indexOf(data.page), data.size, 1, false)
            audit.leastPadHeight = 12.9 * Theme.unitsPerMm
            // Three in a row of 360 are 16.5 mm each.
            const least = narrowPads.includes(data.page) ? 8.9 : data.size.width < 390 ? 16.5 : 17
            audit.leastPadWidth = least * Theme.unitsPerMm
            audit.leastGap = Theme.mm(2)
            verifyPage()
        }

        function test_text_of_any_size_is_whole_data() {
            const rows = []
            for (const size of [sizes[0], sizes[1], sizes[4]]) {
                for (const scale of [1, 1.3, 1.6, 2]) {
                    for (const page of gallery.pages) {
                        const tag = page + " " + size.width + "x" + size.height + " " + scale * 100 + " %"
                        rows.push({ tag: tag, page: page, size: size, scale: scale })
                    }
                }
            }
            return rows
        }
        function test_text_of_any_size_is_whole(data) {
            gallery.pads = data.size.width > 1000 ? Theme.Desk
                         : data.size.height < Theme.lowWindow ? Theme.Low : Theme.Usual
            show(gallery.pages.indexOf(data.page), data.size, data.scale, false)
            verifyPage()
        }

        function test_mirrored_nothing_lies_over_another_data() {
            return gallery.pages.map(page => ({ tag: page }))
        }
        function test_mirrored_nothing_lies_over_another(data) {
            gallery.pads = Theme.Usual
            show(gallery.pages.indexOf(data.tag), sizes[1], 1, true)
            verifyPage()
        }
        function test_mirrored_back_is_on_the_right() {
            gallery.pads = Theme.Usual
            show(gallery.pages.indexOf("Score"), sizes[1], 1, true)
            const back = findChild(gallery, "back")
            verify(back.mapToItem(gallery, 0, 0).x > gallery.width / 2)
        }
    }
}
