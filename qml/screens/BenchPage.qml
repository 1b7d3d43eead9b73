import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The bench: what the blend should be like, the search, and which barrels come nearest.
Page {
    id: page

    required property AppViewModel app
    readonly property BenchViewModel viewModel: page.app.bench
    readonly property int stage: page.viewModel.stage

    title: qsTr("Bench")
    subtitle: page.stage === BenchViewModel.Answers ? qsTr("What comes nearest") : qsTr("Which barrels make the blend?")
    backShown: true
    fullWidth: page.stage === BenchViewModel.Answers
    who: page.app.people.name.length > 0 ? page.app.people.name : qsTr("Who?")
    onBackPressed: page.app.goBack()
    onWhoPressed: page.app.navigator.open(Navigator.People)
    footer: [
        Pad {
            objectName: "search"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: page.stage === BenchViewModel.Asking
            act: true
            enabled: page.viewModel.canSearch
            text: qsTr("Find barrels")
            hint: page.viewModel.canSearch ? "" : qsTr("Set a window first")
            onFired: page.viewModel.search()
        },
        Pad {
            objectName: "stop"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: page.stage === BenchViewModel.Searching
            text: qsTr("Stop")
            hint: qsTr("What is found so far stays")
            onFired: page.viewModel.stop()
        },
        Row {
            width: parent.width
            visible: page.stage === BenchViewModel.Answers
            spacing: Theme.gap

            Pad {
                id: again
                objectName: "again"
                width: Math.round((parent.width - Theme.gap) / 3)
                height: mix.height
                small: true
                text: qsTr("Ask again")
                onFired: page.viewModel.askAgain()
            }
            Pad {
                id: mix
                objectName: "pour"
                width: parent.width - again.width - Theme.gap
                height: Math.max(implicitHeight, again.implicitHeight, Theme.main)
                act: true
                enabled: page.viewModel.canPour
                text: page.viewModel.pickedText
                onFired: page.viewModel.pour()
            }
        }
    ]

    Banner {
        objectName: "error"
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    BenchAsk {
        width: parent.width
        visible: page.stage === BenchViewModel.Asking
        viewModel: page.viewModel
    }
    Column {
        width: parent.width
        visible: page.stage === BenchViewModel.Searching
        spacing: Theme.gap

        Progress {
            objectName: "progress"
            width: parent.width
            text: qsTr("Looking at sets of barrels")
            value: page.viewModel.progress
        }
        Fact {
            objectName: "best"
            width: parent.width
            label: qsTr("Best so far")
            value: page.viewModel.best.length > 0 ? page.viewModel.best : qsTr("none yet")
        }
    }
    BenchAnswers {
        width: parent.width
        visible: page.stage === BenchViewModel.Answers
        viewModel: page.viewModel
    }
}
