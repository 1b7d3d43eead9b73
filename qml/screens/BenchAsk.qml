pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What is asked of the bench, and the benches that were mixed before.
Column {
    id: part

    required property BenchViewModel viewModel

    spacing: Theme.gap

    WaitRows {
        width: parent.width
        waiting: !part.viewModel.loaded
    }
    SectionTitle {
        width: parent.width
        visible: benches.count > 0
        text: qsTr("Mixed before")
    }
    Repeater {
        id: benches
        model: part.viewModel.benches

        ListRow {
            id: bench
            required property int index
            required property string value
            required property string note
            objectName: "bench" + bench.index
            width: part.width
            showEdge: false
            code: ""
            firstLine: bench.value
            secondLine: bench.note
            onOpened: part.viewModel.openBench(bench.index)
        }
    }
    Pad {
        objectName: "moreBenches"
        width: parent.width
        visible: part.viewModel.moreBenches
        small: true
        text: qsTr("More")
        name: qsTr("More benches")
        onFired: part.viewModel.showMoreBenches()
    }
    SectionTitle {
        width: parent.width
        visible: part.viewModel.targets.length > 0
        text: qsTr("What it should taste like: a beer's windows")
    }
    Chips {
        objectName: "targets"
        width: parent.width
        words: part.viewModel.targets
        choice: part.viewModel.target
        onToggled: index => part.viewModel.chooseTarget(index)
    }
    SectionTitle {
        width: parent.width
        text: qsTr("Windows, 1 to 9 on the ladder")
    }
    Repeater {
        model: part.viewModel.windows

        WindowSteps {
            id: line
            width: part.width
            onToggled: part.viewModel.toggleWindow(line.index)
            onLowStepped: by => part.viewModel.stepLow(line.index, by)
            onHighStepped: by => part.viewModel.stepHigh(line.index, by)
        }
    }
    BenchLimits {
        width: parent.width
        viewModel: part.viewModel
    }
    SectionTitle {
        width: parent.width
        visible: part.viewModel.barrels.length > 0
        text: qsTr("Barrels kept back")
    }
    Chips {
        objectName: "kept"
        width: parent.width
        words: part.viewModel.barrels
        chosen: part.viewModel.kept
        onToggled: index => part.viewModel.toggleKept(index)
    }
}
