pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Barrels that may have been meant.
Column {
    id: suggestions

    required property ScanViewModel viewModel

    spacing: Theme.gap

    Repeater {
        model: suggestions.viewModel.suggestions
        Pad {
            id: pad
            required property int index
            required property string modelData
            objectName: "suggestion" + pad.index
            width: suggestions.width
            leastHeight: Theme.rung
            arrangement: Pad.Leading
            text: pad.modelData
            onFired: suggestions.viewModel.chooseSuggestion(pad.index)
        }
    }
}
