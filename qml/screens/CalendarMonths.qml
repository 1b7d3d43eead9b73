import QtQuick
import Spile.Components
import Spile.Theme

// What the bars below mean, and the months above them.
Column {
    id: head

    required property list<string> months
    required property list<real> places
    // The bars stand at the end of their rows, as SpanRow lays them out.
    readonly property bool wide: head.width >= Theme.mm(100) && !Theme.largeText
    readonly property real inner: head.width - 2 * Theme.padding

    spacing: Theme.gap

    Flow {
        width: parent.width
        spacing: Theme.padding
        ChartKey { text: qsTr("best by the outlook"); band: true }
        ChartKey { text: qsTr("next tasting"); tint: Theme.colours.text; mark: true }
        ChartKey { text: qsTr("now"); tint: Theme.colours.focus }
    }
    Item {
        x: Theme.padding + (head.wide ? head.inner - width : 0)
        width: head.wide ? Math.round(head.inner * 0.6) : head.inner
        height: label.height + 2 * Theme.tightPadding

        ChartAxis {
            id: axis
            words: head.months
            places: head.places
            from: 0
            extent: 1
            length: head.wide ? Math.round(head.inner * 0.6) : head.inner
            gap: Theme.padding
            font: Theme.label
        }
        ChartAxisLabels { axis: axis; across: 0 }
        FontMetrics {
            id: label
            font: Theme.label
        }
    }
}
