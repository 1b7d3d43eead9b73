import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Which barrel is this? The camera looks for a label; the code can be typed, the barrel chosen or registered instead.
// Or is it the one that is expected?
Page {
    id: page

    required property AppViewModel app
    property ScanViewModel viewModel: page.app.scan
    // A film, picture or folder in the camera's place; empty: the camera.
    property url standIn
    property alias cameraFile: finder.cameraFile
    property bool typing: false

    signal listWanted()
    signal registerWanted()

    readonly property bool looking: page.viewModel.state === ScanViewModel.Looking
    readonly property bool expecting: page.viewModel.expected.length > 0
    readonly property bool found: page.viewModel.state === ScanViewModel.Found
    readonly property real below: (hints.visible ? hints.height + Theme.gap : 0) + (hit.visible ? hit.height + Theme.gap : 0)
    readonly property bool waysShown: !page.typing && !page.expecting && (page.viewModel.showOtherWays || finder.problem.length > 0)

    readonly property int padColumns: Theme.largeText ? 1 : 2
    readonly property real padWidth: (ways.width - (page.padColumns - 1) * Theme.gap) / page.padColumns

    readonly property string aim: page.expecting ? qsTr("Is this %1?").arg(page.viewModel.expected) : qsTr("Scan a label")

    title: !page.typing ? page.aim : page.viewModel.typed.length > 0 ? page.viewModel.typed : qsTr("Type the code")
    backShown: page.typing || page.expecting
    onBackPressed: page.typing ? page.useCamera() : page.app.goBack()
    onListWanted: page.app.allBarrels()
    onRegisterWanted: page.app.registerBarrel()
    // From the top: what comes later pushes nothing away from under a finger.
    footer: [
        BarrelPads {
            width: parent.width
            visible: page.typing && page.looking && page.viewModel.typedError.length === 0 && names.length > 0
            columns: page.padColumns
            names: page.viewModel.suggestions
            codes: page.viewModel.suggestedCodes
            prefix: "suggestion"
            onChosen: index => page.viewModel.chooseSuggestion(index)
        },
        Pad {
            objectName: "register"
            width: parent.width
            visible: page.waysShown
            text: qsTr("Register a new barrel")
            onFired: page.registerWanted()
        },
        Grid {
            id: aids
            width: parent.width
            columns: page.padColumns
            spacing: Theme.gap
            visible: !page.typing && (finder.torchPossible || finder.zoomPossible)

            Pad {
                objectName: "torch"
                width: page.padWidth
                leastHeight: Theme.mm(18)
                visible: finder.torchPossible
                act: page.viewModel.advice === ScanViewModel.Light && !finder.torchOn
                glyph: Glyph.Torch
                text: qsTr("Torch")
                checkable: true
                chosen: finder.torchOn
                onFired: finder.torchOn = !finder.torchOn
            }
            Pad {
                objectName: "closer"
                width: page.padWidth
                leastHeight: Theme.mm(18)
                visible: finder.zoomPossible
                glyph: Glyph.Search
                text: qsTr("Closer")
                checkable: true
                chosen: finder.zoomedIn
                onFired: finder.zoomedIn = !finder.zoomedIn
            }
        },
        Grid {
            id: ways
            width: parent.width
            columns: page.padColumns
            spacing: Theme.gap
            visible: !page.typing && !page.found

            Pad {
                id: type
                objectName: "type"
                width: page.expecting ? ways.width : page.padWidth
                height: Math.max(implicitHeight, list.implicitHeight)
                text: qsTr("Type the code")
                onFired: page.typing = true
            }
            Pad {
                id: list
                objectName: "fromList"
                visible: !page.expecting
                width: page.padWidth
                height: Math.max(implicitHeight, type.implicitHeight)
                text: qsTr("Choose from the list")
                onFired: page.listWanted()
            }
        }
    ]

    CameraProblem {
        objectName: "problem"
        width: parent.width
        visible: problem.length > 0 && !page.typing
        problem: finder.problem
        otherWays: page.expecting ? qsTr("Type the code from the label, or go back.")
                                  : qsTr("Type the code from the label, or choose the barrel from the list.")
    }
    Viewfinder {
        id: finder
        objectName: "finder"
        width: parent.width
        height: Math.max(Theme.mm(25), Math.min(width * 1.2, page.room - page.below))
        visible: !page.typing && !page.found && finder.problem.length === 0
        active: page.visible && !page.typing && !page.found
        standIn: page.standIn
        onCodesRead: camera => page.viewModel.offer(camera.texts, camera.formats)
        onNothingRead: advice => page.viewModel.miss(advice)
    }
    ScanAdvice {
        id: hints
        objectName: "hints"
        width: parent.width
        visible: finder.visible && page.looking
                 && (page.viewModel.showOtherWays || page.viewModel.advice !== ScanViewModel.NoAdvice)
        viewModel: page.viewModel
        torchPossible: finder.torchPossible
        torchOn: finder.torchOn
    }
    ScanHit {
        id: hit
        objectName: "hit"
        width: parent.width
        visible: !page.looking
        looksOn: finder.visible
        viewModel: page.viewModel
    }
    TypedCode {
        objectName: "typing"
        width: parent.width
        visible: page.typing && page.looking
        viewModel: page.viewModel
    }

    function useCamera() {
        page.typing = false
        page.viewModel.again()
    }
}
