import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// This device's own code, and the ways to the others.
Column {
    id: part

    required property AppViewModel app
    readonly property JoiningViewModel viewModel: part.app.joining
    readonly property bool asks: !part.viewModel.admitted && !part.viewModel.cutOff

    spacing: Theme.gap

    SectionTitle { width: parent.width; text: qsTr("This device") }
    TodayStanding { width: parent.width; viewModel: part.viewModel }
    JoinCode { objectName: "ownCode"; width: parent.width; value: part.viewModel.ownCode }
    Pad {
        objectName: "showSymbol"
        width: parent.width
        visible: part.asks
        act: true
        text: qsTr("Show the symbol")
        hint: qsTr("A desk lets this device in by it")
        onFired: part.app.openDevices()
    }
    Pad {
        objectName: "letIn"
        width: parent.width
        visible: part.viewModel.mayAdmit
        text: qsTr("Let another device in")
        hint: qsTr("By the symbol that it shows, or its code")
        onFired: part.app.openAdmit()
    }
    ToSettlePad { width: parent.width; app: part.app }
    Pad {
        objectName: "devices"
        width: parent.width
        text: qsTr("Devices")
        hint: qsTr("Which there are, their clocks, cutting one off")
        onFired: part.app.openDevices()
    }
}
