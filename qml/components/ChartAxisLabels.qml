pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// The words of one axis, as many as have room, each with a faint line across the plot.
Item {
    id: labels

    required property ChartAxis axis
    required property real across // how far the faint lines go

    Repeater {
        model: labels.axis.marks.length
        Item {
            id: label
            required property int index
            visible: label.index % labels.axis.every === 0

            Rectangle {
                x: labels.axis.upright ? labels.axis.widest + Theme.padding : labels.axis.marks[label.index]
                y: labels.axis.upright ? labels.axis.marks[label.index] : -labels.across
                width: labels.axis.upright ? labels.across : Theme.hairline
                height: labels.axis.upright ? Theme.hairline : labels.across
                color: Theme.colours.ground2
            }
            Words {
                x: labels.axis.upright ? labels.axis.widest - implicitWidth : labels.axis.begins[label.index]
                y: labels.axis.upright ? labels.axis.begins[label.index] : Theme.tightPadding
                wrapMode: Text.NoWrap
                text: labels.axis.words[label.index]
                font: labels.axis.font
                color: Theme.colours.secondText
            }
        }
    }
}
