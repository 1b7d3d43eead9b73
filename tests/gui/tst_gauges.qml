import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

// What shows a quantity.
Item {
    id: window
    width: 390
    height: 844

    Rectangle {
        anchors.fill: parent
        color: Theme.colours.ground0
    }
    Component {
        id: timerOf
        TimerFace { width: 354 }
    }
    Component {
        id: headOf
        HeadPicture { width: 200; height: 200; liquid: "red" }
    }
    Component {
        id: edgeOf
        NotchEdge { width: 30; height: 90 }
    }
    Component {
        id: chartOf
        Chart { width: 354; range: Qt.rect(0, 0, 10, 10) }
    }

    Component {
        id: barOf
        SpanBar { width: 200; height: 20 }
    }

    TestCase {
        name: "Gauges"
        when: windowShown

        function init() {
            Theme.unitsPerMm = 6.04
            Theme.palette = Theme.Dark
        }
        function make(component: Component, properties): Item {
            const item = createTemporaryObject(component, window, properties)
            verify(item)
            waitForRendering(item)
            return item
        }
        function grey(colour: color): real {
            return 0.2126 * colour.r + 0.7152 * colour.g + 0.0722 * colour.b
        }

        function test_timer_stands_still_data() {
            return [{ tag: "minutes", times: ["00:00", "11:11", "17:40", "59:59"] },
                    { tag: "hours, which do not fit at full size", times: ["10:00:00", "11:11:11", "23:59:59"] }]
        }
        function test_timer_stands_still(data) {
            const face = make(timerOf, {})
            const time = findChild(face, "time")
            const widths = data.times.map(text => {
                face.text = text
                waitForRendering(face)
                return time.contentWidth
            })
            verify(widths[0] > 200 && widths[0] <= 354, widths[0])
            compare(widths, new Array(widths.length).fill(widths[0]))
        }
        function test_head_is_filled_to_the_level_data() {
            return [{ tag: "0 %", level: 0 }, { tag: "25 %", level: 0.25 }, { tag: "50 %", level: 0.5 },
                    { tag: "86 %", level: 0.86 },
                    { tag: "100 %", level: 1 }]
        }
        function test_head_is_filled_to_the_level(data) {
            const head = make(headOf, { level: data.level })
            const image = grabImage(head)
            let red = 0
            for (let y = 0; y < 200; ++y) {
                const colour = image.pixel(110, y) // beside the seam in the middle
                red += colour.r > 0.9 && colour.g < 0.1 ? 1 : 0
            }
            fuzzyCompare(red, 184 * data.level, 6) // the lines of surface and rim take some
        }
        function test_head_tells_unknown_from_empty() {
            const head = make(headOf, { level: -1 })
            verify(findChild(head, "unknown").visible)
            verify(!findChild(head, "surface").visible)
            head.level = 0
            verify(!findChild(head, "unknown").visible)
            verify(findChild(head, "surface").visible)
        }
        function test_head_shows_the_outlook_where_it_is() {
            const head = make(headOf, { level: 0.8 })
            const line = findChild(head, "outlook")
            verify(!line.visible)
            head.outlookLevel = 0.5
            verify(line.visible)
            fuzzyCompare(line.y + line.height / 2, 100, 1)
            fuzzyCompare(line.width, 184, 1)
        }
        function test_edges_differ_in_grey_data() {
            return [{ tag: "dark", palette: Theme.Dark }, { tag: "light", palette: Theme.Light },
                    { tag: "night", palette: Theme.Night }]
        }
        function test_edges_differ_in_grey(data) {
            Theme.palette = data.palette
            const shapes = [0, 1, 2, 3, 4].map(standing => {
                const image = grabImage(make(edgeOf, { x: 60 * standing, standing: standing }))
                const cut = []
                const full = grey(Theme.colours[["resting", "soon", "due", "overdue", "held"][standing]])
                for (let y = 1; y < 90; y += 2) {
                    for (let x = 1; x < 30; x += 2) {
                        cut.push(Math.abs(grey(image.pixel(x, y)) - full) < 0.1)
                    }
                }
                return cut
            })
            for (let one = 0; one < 5; ++one) {
                for (let other = one + 1; other < 5; ++other) {
                    const differing = shapes[one].filter((full, i) => full !== shapes[other][i]).length
                    verify(differing > 0.05 * shapes[one].length, one + " and " + other + ": " + differing)
                }
            }
        }
        function touchAt(item, x) {
            const touch = touchEvent(item)
            touch.press(0, item, x, 100).commit()
            wait(40)
            touch.release(0, item, x, 100).commit()
        }
        function test_chart_is_read_by_touch_and_keys() {
            const chart = make(chartOf, { yWords: ["ten"], yPlaces: [5], readable: true, description: "Oak" })
            const read = createTemporaryQmlObject("import QtTest; SignalSpy { signalName: \"read\" }", window)
            read.target = chart
            const line = findChild(chart, "reader"), plot = line.parent
            verify(!line.visible, "no line where nothing is read")
            touchAt(plot, plot.width * 0.7)
            fuzzyCompare(read.signalArguments[read.count - 1][0], 7, 0.1)
            verify(!line.visible, "it keeps nothing")
            chart.reader = 7
            verify(line.visible)
            fuzzyCompare(line.x + line.width / 2, plot.width * 0.7, 1)
            const touch = touchEvent(plot)
            touch.press(0, plot, plot.width * 0.7, 100).commit()
            touch.move(0, plot, plot.width * 0.5, 100).commit()
            wait(30)
            touch.move(0, plot, plot.width * 0.25, 100).commit()
            wait(30)
            touch.release(0, plot, plot.width * 0.25, 100).commit()
            fuzzyCompare(read.signalArguments[read.count - 1][0], 2.5, 0.1)
            chart.forceActiveFocus()
            keyClick(Qt.Key_Right)
            fuzzyCompare(read.signalArguments[read.count - 1][0], 7.2, 0.01)
            keyClick(Qt.Key_Left)
            fuzzyCompare(read.signalArguments[read.count - 1][0], 6.8, 0.01)
            chart.reader = 11
            verify(!line.visible, "the line stays on the chart")
            read.clear()
            chart.focus = chart.readable = false
            touchAt(plot, plot.width * 0.7)
            compare(read.count, 0)
        }
        function test_span_lies_where_its_shares_say() {
            const bar = make(barOf, { from: 0.25, to: 0.75, mark: 0.5, now: 0.1 })
            const span = findChild(bar, "span")
            compare(span.x, 50)
            compare(span.width, 100)
            compare(findChild(bar, "now").x + findChild(bar, "now").width / 2, 20)
            verify(findChild(bar, "mark").visible)
            bar.to = 0.25
            verify(span.width > 5, "a moment is seen too")
            bar.from = bar.to = bar.mark = bar.now = -1
            verify(!span.visible && !findChild(bar, "mark").visible && !findChild(bar, "now").visible)
        }
        function test_chart_takes_any_points_data() {
            const many = Array.from({ length: 500 }, (_, i) => Qt.point(i / 50, 5 + 4 * Math.sin(i / 20)))
            return [{ tag: "none", points: [], drawn: false }, { tag: "one", points: [Qt.point(5, 5)], drawn: true },
                    { tag: "500", points: many, drawn: true },
                    { tag: "NaN alone", points: [Qt.point(NaN, NaN)], drawn: false },
                    { tag: "NaN between", drawn: true,
                      points: [Qt.point(1, 1), Qt.point(2, NaN), Qt.point(3, 3), Qt.point(9, 9)] }]
        }
        function test_chart_takes_any_points(data) {
            const empty = grabImage(make(chartOf, {}))
            const above = data.points.map(point => Qt.point(point.x, point.y + 1))
            for (const courses of [["firstLine"], ["secondLine"], ["thirdLine"], ["bandLower", "bandUpper"],
                                   ["markers"], ["secondMarkers"], ["thirdMarkers"], ["ringed"]]) {
                const chart = make(chartOf, { y: 400 })
                for (const course of courses) {
                    chart[course] = course === "bandUpper" ? above : data.points
                }
                const drawn = !grabImage(chart).equals(empty)
                chart.destroy()
                compare(drawn, data.drawn, courses[0])
            }
        }
    }
}
