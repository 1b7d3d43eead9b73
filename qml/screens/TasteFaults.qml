import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Is anything wrong with it?
Column {
    id: part

    required property TastingViewModel viewModel

    spacing: Theme.gap

    Text {
        width: parent.width
        text: qsTr("Tap once for slight, again for clear, again for strong, once more for none.")
        wrapMode: Text.Wrap
        color: Theme.colours.secondText
        font: Theme.body
    }
    Chips {
        objectName: "faults"
        width: parent.width
        words: part.viewModel.faults
        chosen: part.viewModel.faultsChosen
        onToggled: index => part.viewModel.tapFault(index)
    }
    Pad {
        objectName: "tired"
        width: parent.width
        checkable: true
        chosen: part.viewModel.palateTired
        text: qsTr("My palate is tired, or I feel unwell")
        onFired: part.viewModel.tapPalateTired()
    }
}
