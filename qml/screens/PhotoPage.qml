import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// A photo of a barrel or of the sample: aim, take, see what was kept.
Page {
    id: page

    required property AppViewModel app
    property PhotoViewModel viewModel: page.app.photo
    // A film, picture or folder in the camera's place; empty: the camera.
    property url standIn
    property alias cameraFile: finder.cameraFile

    title: qsTr("Photo")
    subtitle: page.viewModel.ofSheet ? qsTr("The sample from %1").arg(page.viewModel.barrelName) : page.viewModel.barrelName
    backShown: true
    onBackPressed: page.app.goBack()
    footer: [
        Row {
            id: afterwards
            width: parent.width
            spacing: Theme.gap
            visible: page.viewModel.kept

            Pad {
                id: undo
                objectName: "undo"
                width: (afterwards.width - afterwards.spacing) / 2
                height: Math.max(implicitHeight, another.implicitHeight)
                glyph: Glyph.Undo
                text: qsTr("Undo")
                enabled: !page.viewModel.busy
                onFired: page.viewModel.undo()
            }
            Pad {
                id: another
                objectName: "another"
                width: (afterwards.width - afterwards.spacing) / 2
                height: Math.max(implicitHeight, undo.implicitHeight)
                glyph: Glyph.Photo
                text: qsTr("Take another")
                enabled: !page.viewModel.busy
                onFired: page.viewModel.another()
            }
        },
        Pad {
            objectName: "done"
            width: parent.width
            leastHeight: Theme.main
            visible: page.viewModel.kept
            act: true
            glyph: Glyph.Check
            text: qsTr("Done")
            onFired: page.app.goBack()
        },
        Pad {
            objectName: "torch"
            width: parent.width
            leastHeight: Theme.mm(18)
            visible: !page.viewModel.kept && !page.viewModel.ofSheet && finder.torchPossible
            glyph: Glyph.Torch
            text: qsTr("Torch")
            checkable: true
            chosen: finder.torchOn
            onFired: finder.torchOn = !finder.torchOn
        },
        Pad {
            objectName: "take"
            width: parent.width
            leastHeight: Theme.main
            visible: !page.viewModel.kept && finder.problem.length === 0
            act: true
            enabled: page.viewModel.canTake
            glyph: Glyph.Photo
            text: page.viewModel.busy ? qsTr("The photo is being kept") : qsTr("Take photo")
            onFired: page.take()
        }
    ]

    Banner {
        objectName: "error"
        width: parent.width
        visible: page.viewModel.errorText.length > 0
        kind: Banner.Refused
        text: page.viewModel.errorText
    }
    CameraProblem {
        objectName: "problem"
        width: parent.width
        visible: problem.length > 0 && !page.viewModel.kept
        problem: finder.problem
        otherWays: page.viewModel.ofSheet ? qsTr("Go back: the sheet goes on without a photo.")
                                          : qsTr("Go back: everything else can be recorded without a photo.")
    }
    Chips {
        objectName: "purposes"
        width: parent.width
        visible: !page.viewModel.ofSheet && !page.viewModel.kept && finder.problem.length === 0
        words: page.viewModel.purposes
        chosen: [page.viewModel.purpose === 0, page.viewModel.purpose === 1]
        onToggled: index => page.viewModel.purpose = index
    }
    Words {
        id: advice
        objectName: "advice"
        width: parent.width
        visible: finder.visible && page.viewModel.ofSheet
        text: qsTr("Torch off. Fill the frame with the glass, before white paper and in daylight if you can.")
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Viewfinder {
        id: finder
        objectName: "finder"
        width: parent.width
        height: Math.max(Theme.mm(25), page.room - finder.y)
        visible: !page.viewModel.kept && finder.problem.length === 0
        active: page.visible && !page.viewModel.kept
        whole: true
        frameAspect: page.viewModel.ofSheet ? 0.75 : 1
        standIn: page.standIn
        onPhotoTaken: file => page.viewModel.keep(file)
        onPhotoFailed: page.viewModel.takingFailed()
    }
    Words {
        objectName: "kept"
        width: parent.width
        visible: page.viewModel.kept
        text: qsTr("The photo is kept.")
        font: Theme.strongBody
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    PhotoFrame {
        objectName: "picture"
        width: parent.width
        visible: page.viewModel.kept
        source: page.viewModel.pictureUrl
        description: qsTr("The photo that was kept")
    }

    function take() {
        const folder = page.viewModel.take()
        if (folder.length > 0) {
            finder.takePhoto(folder)
        }
    }
}
