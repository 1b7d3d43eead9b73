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
        Words { // always as high, so that nothing moves under the finger
            objectName: "kept"
            width: parent.width
            height: Math.max(implicitHeight, Theme.label.pixelSize * 1.25)
            text: page.viewModel.undoText
            font: Theme.label
            color: Theme.colours.secondText
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        },
        Row {
            id: foot
            width: parent.width
            spacing: Theme.gap
            layoutDirection: page.app.settings.leftHanded ? Qt.RightToLeft : Qt.LeftToRight

            Pad {
                id: previous
                objectName: "previous"
                width: visible ? (foot.width - 2 * foot.spacing) / 3 : 0
                height: next.height
                visible: !page.viewModel.first
                small: true
                glyph: Glyph.Back
                text: qsTr("Before")
                name: qsTr("The one before")
                onFired: page.viewModel.previous()
            }
            Pad {
                id: undo
                objectName: "undo"
                width: previous.visible ? previous.width : foot.width * 0.4
                height: Math.max(implicitHeight, next.implicitHeight)
                small: true
                enabled: page.viewModel.canUndo
                glyph: Glyph.Undo
                text: qsTr("Undo")
                name: page.viewModel.canUndo ? qsTr("Undo: %1").arg(page.viewModel.undoText) : qsTr("Undo")
                onFired: page.viewModel.undo()
            }
            Pad {
                id: next
                objectName: "next"
                width: foot.width - undo.width - foot.spacing - (previous.visible ? previous.width + foot.spacing : 0)
                height: Math.max(implicitHeight, undo.implicitHeight)
                visible: !page.viewModel.last
                act: !page.onLadder || page.viewModel.value > 0
                glyph: Glyph.Next
                text: page.viewModel.nextText
                hint: page.viewModel.readout
                onFired: page.viewModel.next()
            }
            Pad {
                objectName: "close"
                width: next.width
                height: next.height
                visible: page.viewModel.last
                act: true
                glyph: Glyph.Check
                text: qsTr("Close", "a tasting sheet")
                name: qsTr("Close sheet")
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
}
