import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What instruments say of the sample. Each may be left out; the first tap shows what is expected.
Column {
    id: part

    required property TastingViewModel viewModel

    spacing: Theme.gap * 2

    Stepper {
        objectName: "gravity"
        width: parent.width
        label: qsTr("Gravity, at 20 °C")
        readout: part.viewModel.gravity
        smallStep: part.viewModel.steps[0]
        bigStep: part.viewModel.steps[1]
        empty: part.viewModel.gravity.length === 0
        onBegun: part.viewModel.stepReading(TastingViewModel.Gravity, 0)
        onStepped: count => part.viewModel.stepReading(TastingViewModel.Gravity, count)
    }
    Stepper {
        objectName: "ph"
        width: parent.width
        label: qsTr("pH")
        readout: part.viewModel.ph
        smallStep: part.viewModel.steps[2]
        bigStep: part.viewModel.steps[3]
        empty: part.viewModel.ph.length === 0
        onBegun: part.viewModel.stepReading(TastingViewModel.Ph, 0)
        onStepped: count => part.viewModel.stepReading(TastingViewModel.Ph, count)
    }
    Stepper {
        objectName: "temperature"
        width: parent.width
        label: qsTr("Temperature")
        readout: part.viewModel.temperature
        unit: part.viewModel.temperatureUnit
        smallStep: part.viewModel.steps[4]
        bigStep: part.viewModel.steps[5]
        empty: part.viewModel.temperature.length === 0
        onBegun: part.viewModel.stepReading(TastingViewModel.Temperature, 0)
        onStepped: count => part.viewModel.stepReading(TastingViewModel.Temperature, count)
    }
}
