import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// How a sample is drawn and how much of it.
Column {
    id: form

    required property DrawingViewModel viewModel

    spacing: Theme.gap

    Banner {
        width: parent.width
        visible: form.viewModel.error.length > 0
        kind: Banner.Refused
        text: form.viewModel.error
    }
    SectionTitle { width: parent.width; text: qsTr("Where is it drawn?") }
    Chips {
        objectName: "methods"
        width: parent.width
        mostInARow: 3
        words: form.viewModel.methods
        choice: form.viewModel.method
        onToggled: index => form.viewModel.method = index
    }
    Stepper {
        objectName: "volume"
        width: parent.width
        label: qsTr("How much?")
        readout: form.viewModel.volume
        smallStep: form.viewModel.smallStep
        bigStep: form.viewModel.bigStep
        canLess: form.viewModel.canLess
        onStepped: count => form.viewModel.step(count)
    }
}
