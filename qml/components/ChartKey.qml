import QtQuick
import Spile.Theme
import Spile.Components

// What a line, the band or a mark of a chart means, with a piece of it.
Row {
    id: key

    property string text
    property color tint
    property list<real> dashes // none: solid
    property bool band
    property bool mark // a mark and no line
    property int markShape: ChartLine.Diamond
    readonly property real piece: 2 * Theme.glyph

    spacing: Theme.padding
    visible: key.text.length > 0

    Item {
        anchors.verticalCenter: parent.verticalCenter
        width: key.piece
        height: Theme.glyph / 2
        Rectangle {
            anchors.fill: parent
            visible: key.band
            color: Theme.colours.band
            border.width: Theme.hairline
            border.color: Theme.colours.bandEdge
        }
        ChartLine {
            anchors.fill: parent
            visible: !key.band
            range: Qt.rect(0, -1, 1, 2)
            points: key.mark ? [Qt.point(0.5, 0)] : [Qt.point(0, 0), Qt.point(1, 0)]
            tint: key.tint
            thickness: Theme.chartLine
            markSize: key.markShape === ChartLine.Ring ? Theme.chartMark / 2 : Theme.chartMark
            marksOnly: key.mark
            markShape: key.markShape
            dashes: key.dashes
        }
    }
    Words {
        width: Math.min(Math.ceil(implicitWidth), key.parent.width - key.piece - key.spacing)
        text: key.text
        font: Theme.label
        color: Theme.colours.secondText
    }
}
