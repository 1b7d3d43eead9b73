pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// How many barrels, and the bounds of volume and strength.
Column {
    id: part

    required property BenchViewModel viewModel
    // In the order of BenchViewModel.Limit.
    readonly property list<string> labels: [qsTr("The tank holds"), qsTr("Volume at least"),
        qsTr("Strength at least"), qsTr("Strength at most")]

    spacing: Theme.gap

    SectionTitle {
        width: parent.width
        text: qsTr("Barrels and bounds")
    }
    Words {
        width: parent.width
        text: qsTr("Barrels at most")
        font: Theme.label
        color: Theme.colours.secondText
    }
    Row {
        width: parent.width
        spacing: Theme.gap

        Readout {
            objectName: "barrelsMost"
            width: (part.width - 2 * Theme.gap) / 3
            text: part.viewModel.barrelsMost
        }
        StepPad {
            objectName: "fewer"
            width: (part.width - 2 * Theme.gap) / 3
            label: qsTr("Barrels at most")
            count: -1
            step: "1"
            onFired: part.viewModel.stepBarrels(-1)
        }
        StepPad {
            objectName: "moreBarrels"
            width: (part.width - 2 * Theme.gap) / 3
            label: qsTr("Barrels at most")
            count: 1
            step: "1"
            onFired: part.viewModel.stepBarrels(1)
        }
    }
    Pad {
        objectName: "part"
        width: parent.width
        checkable: true
        chosen: part.viewModel.part
        text: qsTr("One barrel may be taken in part")
        hint: qsTr("It is left with air over it")
        onFired: part.viewModel.togglePart()
    }
    Repeater {
        model: part.labels

        Stepper {
            id: limit
            required property int index
            required property string modelData
            objectName: "limit" + limit.index
            width: part.width
            label: limit.modelData
            readout: part.viewModel.limits[limit.index] ?? ""
            empty: limit.readout.length === 0
            smallStep: part.viewModel.smallSteps[limit.index] ?? ""
            bigStep: part.viewModel.bigSteps[limit.index] ?? ""
            onBegun: part.viewModel.stepLimit(limit.index, 0)
            onStepped: count => part.viewModel.stepLimit(limit.index, count)
        }
    }
    Pad {
        objectName: "clearLimits"
        width: parent.width
        small: true
        text: qsTr("No bounds of volume and strength")
        onFired: part.viewModel.clearLimits()
    }
}
