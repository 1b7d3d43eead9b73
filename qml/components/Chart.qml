pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// Courses over time: a band, up to three lines told apart by their dashes, and markers. All in units of the data, of
// which `range` is shown.
Item {
    id: chart

    property rect range
    property list<point> firstLine
    property list<point> secondLine
    property list<point> thirdLine
    property list<point> bandLower // point by point with bandUpper
    property list<point> bandUpper
    property list<point> markers
    property list<string> xWords
    property list<real> xPlaces
    property list<string> yWords
    property list<real> yPlaces
    property string firstWord // what each means; empty: not in the key
    property string secondWord
    property string thirdWord
    property string bandWord
    property string description // for those who do not see it
    property real plotHeight: Theme.chartHeight

    readonly property list<real> dashes: [4, 2]
    readonly property list<real> dots: [1, 1.5]

    implicitWidth: Theme.listColumn
    implicitHeight: key.y + key.height
    LayoutMirroring.enabled: false // time runs from the left
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: chart.description

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
        Rectangle { width: Theme.outline; height: parent.height; color: Theme.colours.line }
        Rectangle { y: parent.height; width: parent.width; height: Theme.outline; color: Theme.colours.line }
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
    }
    FontMetrics {
        id: label
        font: Theme.label
    }
}
