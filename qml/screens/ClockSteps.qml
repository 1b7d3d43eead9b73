import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// A date and a time, set by steps.
Column {
    id: steps

    required property ClockViewModel viewModel

    spacing: Theme.gap

    SectionTitle {
        width: parent.width
        text: steps.viewModel.own ? qsTr("The right time now") : qsTr("What it shows now")
    }
    Stepper {
        objectName: "hour"
        width: parent.width
        label: qsTr("Hour")
        readout: steps.viewModel.time
        smallStep: qsTr("1 h")
        bigStep: qsTr("10 h")
        onStepped: count => steps.viewModel.step(ClockViewModel.Hour, count)
    }
    Stepper {
        objectName: "minute"
        width: parent.width
        label: qsTr("Minute")
        readout: steps.viewModel.time
        smallStep: qsTr("1 min")
        bigStep: qsTr("10 min")
        onStepped: count => steps.viewModel.step(ClockViewModel.Minute, count)
    }
    Stepper {
        objectName: "day"
        width: parent.width
        label: qsTr("Day")
        readout: steps.viewModel.date
        smallStep: qsTr("1 day")
        bigStep: qsTr("10 days")
        onStepped: count => steps.viewModel.step(ClockViewModel.Day, count)
    }
    MonthStepper {
        objectName: "month"
        width: parent.width
        label: qsTr("Date")
        readout: steps.viewModel.date
        onStepped: months => steps.viewModel.step(ClockViewModel.Month, months)
    }
}
