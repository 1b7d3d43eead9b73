pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// Courses over time: a band, up to three lines told apart by their dashes, and markers of up to three kinds, of which
// some may have a ring. All in units of the data, of which `range` is shown. A reader's line is moved by touch or by the
// arrow keys; what stands there is told by whoever listens.
Item {
    id: chart

    property rect range
    property list<point> firstLine
    property list<point> secondLine
    property list<point> thirdLine
    property list<point> bandLower // point by point with bandUpper
    property list<point> bandUpper
    property list<point> markers
    property list<point> secondMarkers
    property list<point> thirdMarkers
    property list<point> ringed
    property list<string> xWords
    property list<real> xPlaces
    property list<string> yWords
    property list<real> yPlaces
    property string firstWord // what each means; empty: not in the key
    property string secondWord
    property string thirdWord
    property string bandWord
    property string markersWord
    property string secondMarkersWord
    property string thirdMarkersWord
    property string ringedWord
    property string description // for those who do not see it
    property real plotHeight: Theme.chartHeight
    property bool readable // has a reader's line
    property real reader: NaN // where it stands

    signal read(real x)

    readonly property list<real> dashes: [4, 2]
    readonly property list<real> dots: [1, 1.5]

    implicitWidth: Theme.listColumn
    implicitHeight: key.y + key.height
    LayoutMirroring.enabled: false // time runs from the left
    LayoutMirroring.childrenInherit: true
    activeFocusOnTab: chart.readable
    Accessible.role: Accessible.Graphic
    Accessible.name: chart.description
    Accessible.focusable: chart.readable
    Keys.onLeftPressed: chart.read(chart.reader - chart.range.width / 50)
    Keys.onRightPressed: chart.read(chart.reader + chart.range.width / 50)

    ChartAxis {
        id: xAxis
        words: chart.xWords
        places: chart.xPlaces
        from: chart.range.x
        extent: chart.range.width
        length: plot.width
        gap: Theme.padding
        font: Theme.label
    }
    ChartAxis {
        id: yAxis
        words: chart.yWords
        places: chart.yPlaces
        from: chart.range.y
        extent: chart.range.height
        length: plot.height
        font: Theme.label
        upright: true
    }

    component Course: ChartLine {
        anchors.fill: parent
        thickness: Theme.chartLine
        markSize: Theme.chartMark
    }

    ChartAxisLabels { axis: yAxis; across: plot.width }
    ChartAxisLabels { x: plot.x; y: plot.height; axis: xAxis; across: plot.height }
    Item {
        id: plot
        x: chart.yWords.length > 0 ? Math.ceil(yAxis.widest) + Theme.padding : 0
        width: chart.width - x
        height: chart.plotHeight

        ChartBand {
            anchors.fill: parent
            range: chart.range
            lower: chart.bandLower
            upper: chart.bandUpper
            fill: Theme.colours.band
            edge: Theme.colours.bandEdge
            edgeThickness: Theme.hairline
        }
        Course { range: chart.range; points: chart.thirdLine; tint: Theme.colours.thirdLine; dashes: chart.dots }
        Course { range: chart.range; points: chart.secondLine; tint: Theme.colours.secondLine; dashes: chart.dashes }
        Course { range: chart.range; points: chart.firstLine; tint: Theme.colours.firstLine }
        Course { range: chart.range; points: chart.markers; tint: Theme.colours.text; marksOnly: true }
        Course { range: chart.range; points: chart.secondMarkers; tint: Theme.colours.text; marksOnly: true; markShape: ChartLine.Disc }
        Course { range: chart.range; points: chart.thirdMarkers; tint: Theme.colours.text; marksOnly: true; markShape: ChartLine.Triangle }
        Course { range: chart.range; points: chart.ringed; tint: Theme.colours.warning; marksOnly: true; markShape: ChartLine.Ring }
        Rectangle { width: Theme.outline; height: parent.height; color: Theme.colours.line }
        Rectangle { y: parent.height; width: parent.width; height: Theme.outline; color: Theme.colours.line }
        Rectangle {
            objectName: "reader"
            x: (chart.reader - chart.range.x) / chart.range.width * plot.width - width / 2
            width: Theme.focusRing
            height: parent.height
            visible: chart.readable && chart.reader >= chart.range.x && chart.reader <= chart.range.right
            color: Theme.colours.focus
        }
        TapHandler {
            enabled: chart.readable
            onTapped: eventPoint => chart.readAt(eventPoint.position.x)
        }
        DragHandler { // along the axis only, so that the page can be moved by its charts
            target: null
            enabled: chart.readable
            yAxis.enabled: false
            onCentroidChanged: if (active) chart.readAt(centroid.position.x)
        }
        FocusRing { visible: chart.activeFocus }
    }
    Flow {
        id: key
        y: plot.height + Theme.tightPadding + (chart.xWords.length > 0 ? label.height : 0) + Theme.tightPadding
        width: parent.width
        spacing: Theme.padding
        ChartKey { text: chart.firstWord; tint: Theme.colours.firstLine }
        ChartKey { text: chart.secondWord; tint: Theme.colours.secondLine; dashes: chart.dashes }
        ChartKey { text: chart.thirdWord; tint: Theme.colours.thirdLine; dashes: chart.dots }
        ChartKey { text: chart.bandWord; band: true }
        ChartKey { text: chart.markersWord; tint: Theme.colours.text; mark: true }
        ChartKey { text: chart.secondMarkersWord; tint: Theme.colours.text; mark: true; markShape: ChartLine.Disc }
        ChartKey { text: chart.thirdMarkersWord; tint: Theme.colours.text; mark: true; markShape: ChartLine.Triangle }
        ChartKey { text: chart.ringedWord; tint: Theme.colours.warning; mark: true; markShape: ChartLine.Ring }
    }
    FontMetrics {
        id: label
        font: Theme.label
    }

    function readAt(x: real) {
        chart.read(chart.range.x + Theme.within(x / plot.width, 0, 1) * chart.range.width)
    }
}
