import QtQuick
import Spile.Components
import Spile.Theme

// How far long work is.
Column {
    id: progress

    required property string text
    property real value

    spacing: Theme.gap / 2
    Accessible.role: Accessible.ProgressBar
    Accessible.name: progress.text

    Words {
        width: parent.width
        text: progress.text
    }
    Rectangle {
        width: parent.width
        height: Theme.padding
        color: Theme.colours.ground2

        Rectangle {
            width: parent.width * progress.value
            height: parent.height
            color: Theme.colours.act
        }
    }
}
