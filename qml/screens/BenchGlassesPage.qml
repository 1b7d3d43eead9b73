import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The glasses of a bench: mixed, scored blind by one after the other, one of them accepted, and then the tank.
Page {
    id: page

    required property AppViewModel app
    readonly property BenchGlassesViewModel viewModel: page.app.glasses
    readonly property int stage: page.viewModel.stage
    readonly property bool scoring: page.stage === BenchGlassesViewModel.Scoring

    title: page.scoring ? page.viewModel.asked : page.viewModel.title
    subtitle: page.scoring ? page.viewModel.progress
            : page.stage === BenchGlassesViewModel.Mixing ? page.viewModel.mixing : page.viewModel.taster
    backShown: true
    onBackPressed: page.app.goBack()
    footer: [
        Pad {
            objectName: "nextGlass"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: page.stage === BenchGlassesViewModel.Mixing
            act: true
            enabled: page.viewModel.measured
            text: page.viewModel.lastGlass ? qsTr("Taste") : qsTr("Next glass")
            hint: page.viewModel.measured ? "" : qsTr("Tick off what is measured")
            onFired: page.viewModel.nextGlass()
        },
        Pad {
            objectName: "beginTasting"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: page.stage === BenchGlassesViewModel.SettingOut
            act: true
            text: qsTr("Hand the phone to %1").arg(page.viewModel.taster)
            onFired: page.viewModel.beginTasting()
        },
        Row {
            id: foot
            width: parent.width
            visible: page.scoring
            spacing: Theme.gap

            Pad {
                id: previous
                objectName: "previous"
                width: Math.round((foot.width - Theme.gap) / 3)
                height: next.height
                enabled: page.viewModel.canStepBack
                small: true
                text: qsTr("Back to the one before")
                onFired: page.viewModel.previous()
            }
            Pad {
                id: next
                objectName: "next"
                width: foot.width - previous.width - Theme.gap
                height: Math.max(implicitHeight, previous.implicitHeight, Theme.main)
                act: page.viewModel.value > 0
                glyph: page.viewModel.lastAsked ? Glyph.Check : Glyph.Next
                text: page.viewModel.lastAsked ? qsTr("Glass %1 is scored").arg(page.viewModel.letter)
                    : page.viewModel.value > 0 ? qsTr("Next") : qsTr("Not judged")
                onFired: page.viewModel.next()
            }
        },
        Pad {
            objectName: "nextTaster"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: page.stage === BenchGlassesViewModel.Scores
            text: qsTr("Next taster")
            onFired: page.viewModel.nextTaster()
        },
        Pad {
            objectName: "makeLot"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: page.stage === BenchGlassesViewModel.Tank
            act: true
            text: page.viewModel.made ? qsTr("Go to the lot") : qsTr("Make the lot")
            onFired: page.viewModel.makeLot()
        }
    ]

    WaitRows {
        width: parent.width
        waiting: page.stage === BenchGlassesViewModel.Reading
    }
    BenchMixing {
        width: parent.width
        visible: page.stage === BenchGlassesViewModel.Mixing
        viewModel: page.viewModel
    }
    BenchTasters {
        width: parent.width
        visible: page.stage === BenchGlassesViewModel.Tasters || page.stage === BenchGlassesViewModel.SettingOut
        app: page.app
    }
    BenchScoring {
        width: parent.width
        visible: page.scoring
        viewModel: page.viewModel
    }
    BenchChoice {
        width: parent.width
        visible: page.stage === BenchGlassesViewModel.Scores
        viewModel: page.viewModel
    }
    BenchTank {
        width: parent.width
        visible: page.stage === BenchGlassesViewModel.Tank
        viewModel: page.viewModel
    }
}
