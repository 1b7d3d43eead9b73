import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What was read: a barrel, large enough to be compared with the chalk on the head, or why it leads nowhere.
Column {
    id: hit

    required property ScanViewModel viewModel
    property bool looksOn // the camera goes on looking meanwhile
    readonly property bool found: hit.viewModel.state === ScanViewModel.Found

    spacing: Theme.gap

    Words {
        objectName: "hitName"
        width: parent.width
        visible: hit.found
        text: hit.viewModel.name
        font: Theme.readout
        horizontalAlignment: Text.AlignHCenter
        Accessible.role: Accessible.AlertMessage
        Accessible.name: qsTr("%1, code %2").arg(hit.viewModel.name).arg(hit.viewModel.code)
    }
    Words {
        objectName: "hitCode"
        width: parent.width
        visible: hit.found
        text: hit.viewModel.code
        font: Theme.readout
        horizontalAlignment: Text.AlignHCenter
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Banner {
        objectName: "message"
        width: parent.width
        visible: hit.viewModel.message.length > 0
        kind: hit.viewModel.state === ScanViewModel.WrongBarrel ? Banner.Refused : Banner.Note
        text: hit.viewModel.message
    }
    BarrelPads {
        width: parent.width
        visible: hit.viewModel.state === ScanViewModel.Several
        names: hit.viewModel.suggestions
        codes: hit.viewModel.suggestedCodes
        prefix: "suggestion"
        onChosen: index => hit.viewModel.chooseSuggestion(index)
    }
    Pad {
        objectName: "choose"
        width: parent.width
        leastHeight: Theme.main
        visible: hit.found && hit.viewModel.beside.length > 0
        act: true
        text: qsTr("This one")
        onFired: hit.viewModel.choose()
    }
    SectionTitle {
        width: parent.width
        visible: hit.viewModel.beside.length > 0
        text: qsTr("Also in view")
    }
    BarrelPads {
        width: parent.width
        names: hit.viewModel.beside
        codes: hit.viewModel.codesBeside
        prefix: "beside"
        onChosen: index => hit.viewModel.chooseBeside(index)
    }
    Pad {
        objectName: "registerThis"
        width: parent.width
        visible: hit.viewModel.state === ScanViewModel.Unknown
        act: true
        text: qsTr("Register a barrel with this code")
        onFired: hit.viewModel.registerUnknown()
    }
    Pad {
        objectName: "letIn"
        width: parent.width
        visible: hit.viewModel.state === ScanViewModel.AskingDevice
        act: true
        text: qsTr("Let this device in")
        onFired: hit.viewModel.letDeviceIn()
    }
    Pad {
        objectName: "again"
        width: parent.width
        visible: !hit.looksOn
        glyph: hit.found ? Glyph.None : Glyph.Undo
        text: hit.found ? qsTr("Not this one") : qsTr("Try again")
        onFired: hit.viewModel.again()
    }
}
