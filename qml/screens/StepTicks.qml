pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What has to be seen to at this step, to be ticked off.
Column {
    id: part

    required property WorkViewModel viewModel

    spacing: Theme.gap

    Repeater {
        model: part.viewModel.ticks
        Pad {
            id: tick
            required property int index
            required property string modelData
            objectName: "tick" + tick.index
            width: part.width
            arrangement: Pad.Leading
            checkable: true
            chosen: part.viewModel.ticked[tick.index] ?? false
            text: tick.modelData
            onFired: part.viewModel.tick(tick.index)
        }
    }
}
