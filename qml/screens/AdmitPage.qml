import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Another device is let in: the camera reads the symbol that it shows, or its code is typed; then it gets a name.
Page {
    id: page

    required property AppViewModel app
    readonly property AdmittingViewModel viewModel: page.app.admitting
    // A film, picture or folder in the camera's place; empty: the camera.
    property url standIn
    property alias cameraFile: finder.cameraFile
    readonly property bool may: page.viewModel.missing.length === 0
    readonly property bool looking: page.may && page.viewModel.state === AdmittingViewModel.Looking
    readonly property bool asking: page.viewModel.state === AdmittingViewModel.Asking

    title: qsTr("Let a device in")
    subtitle: page.app.joining.cellarName
    backShown: true
    onBackPressed: page.app.goBack()
    footer: Pad {
        objectName: "admit"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        visible: page.asking
        act: true
        text: qsTr("Let it in")
        onFired: page.viewModel.admit()
    }

    Banner {
        objectName: "missing"
        width: parent.width
        visible: !page.may
        text: page.viewModel.missing
    }
    Words {
        width: parent.width
        visible: page.looking
        text: qsTr("Point the camera at the symbol on the other device. It is there under Today, Settings, Devices, once it has joined.")
    }
    CameraProblem {
        objectName: "problem"
        width: parent.width
        visible: page.looking && problem.length > 0
        problem: finder.problem
        otherWays: qsTr("Type the code that stands below the symbol.")
    }
    Viewfinder {
        id: finder
        objectName: "finder"
        width: parent.width
        height: Math.max(Theme.mm(25), Math.min(width, page.room / 2))
        visible: page.looking && finder.problem.length === 0
        active: page.visible && page.looking
        standIn: page.standIn
        onCodesRead: camera => page.viewModel.offer(camera.texts, camera.formats)
    }
    Banner {
        objectName: "message"
        width: parent.width
        visible: page.may && page.viewModel.message.length > 0
        kind: Banner.Note
        text: page.viewModel.message
    }
    TextEntry {
        objectName: "code"
        width: parent.width
        visible: page.looking
        label: qsTr("Or type the code that it shows")
        text: page.viewModel.code
        error: page.viewModel.codeError
        onEdited: newText => page.viewModel.code = newText
    }
    AdmitForm {
        width: parent.width
        visible: page.asking
        viewModel: page.viewModel
    }
}
