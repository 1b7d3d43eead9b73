import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// An open sheet, one thing asked at a time. Nothing of earlier sheets is anywhere on it.
Page {
    id: page

    required property AppViewModel app
    readonly property TastingViewModel viewModel: page.app.tasting
    readonly property bool onLadder: page.viewModel.step === TastingViewModel.Attribute
                                     || page.viewModel.step === TastingViewModel.Liking

    title: page.viewModel.title
    subtitle: qsTr("%1 · %2 · %3").arg(page.viewModel.place).arg(page.viewModel.barrelName).arg(page.viewModel.taster)
    backShown: true
    onBackPressed: page.app.goBack()
    footer: [
        Row {
            id: foot
            width: parent.width
            spacing: Theme.gap
            layoutDirection: page.app.settings.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

            Pad {
                id: undo
                objectName: "undo"
                width: (foot.width - foot.spacing) * 0.45
                height: Math.max(implicitHeight, next.implicitHeight)
                enabled: page.viewModel.canUndo
                glyph: Glyph.Undo
                text: qsTr("Undo")
                hint: page.viewModel.undoText
                onFired: page.viewModel.undo()
            }
            Pad {
                id: next
                objectName: "next"
                width: (foot.width - foot.spacing) * 0.55
                height: Math.max(implicitHeight, undo.implicitHeight)
                visible: !page.viewModel.last
                act: !page.onLadder || page.viewModel.value > 0
                glyph: Glyph.Next
                text: page.viewModel.nextText
                hint: page.viewModel.readout.length > 0 ? qsTr("%1: %2").arg(page.viewModel.title).arg(page.viewModel.readout) : ""
                onFired: page.viewModel.next()
            }
            Pad {
                objectName: "close"
                width: next.width
                height: next.height
                visible: page.viewModel.last
                act: true
                glyph: Glyph.Check
                text: qsTr("Close sheet")
                onFired: page.viewModel.close()
            }
        }
    ]

    Ladder {
        objectName: "ladder"
        width: parent.width
        visible: page.onLadder
        value: page.viewModel.value
        notJudged: page.viewModel.notJudged
        words: page.viewModel.ladderWords
        onChosen: value => page.viewModel.choose(value)
        onNudged: by => page.viewModel.nudge(by)
    }
    TasteFaults {
        width: parent.width
        visible: page.viewModel.step === TastingViewModel.Faults
        viewModel: page.viewModel
    }
    TasteReadings {
        width: parent.width
        visible: page.viewModel.step === TastingViewModel.Readings
        viewModel: page.viewModel
    }
    TasteNote {
        width: parent.width
        visible: page.viewModel.step === TastingViewModel.Note
        viewModel: page.viewModel
    }
    TasteClose {
        width: parent.width
        visible: page.viewModel.step === TastingViewModel.Close
        app: page.app
    }
    Pad {
        objectName: "previous"
        width: parent.width
        visible: !page.viewModel.first
        small: true
        glyph: Glyph.Back
        text: qsTr("The one before")
        onFired: page.viewModel.previous()
    }
}
