pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// This taster has tasted every glass: what was in each, and how it compares.
Column {
    id: part

    required property FlightViewModel viewModel

    spacing: Theme.gap

    Words {
        width: parent.width
        text: qsTr("Your sheets are closed. Look at each beside earlier ones and say what you would have it become.")
        color: Theme.colours.secondText
    }
    Repeater {
        model: part.viewModel.revealed

        Pad {
            id: line
            required property int index
            required property string glass
            required property string barrel
            objectName: "revealed" + line.index
            width: part.width
            arrangement: Pad.Leading
            text: line.glass
            hint: line.barrel
            onFired: part.viewModel.compare(line.index)
        }
    }
}
