import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// This device's own code, which another one reads, and the ways to the others.
Column {
    id: part

    required property AppViewModel app
    readonly property JoiningViewModel viewModel: part.app.joining
    readonly property bool asks: !part.viewModel.admitted && !part.viewModel.cutOff

    spacing: Theme.gap

    SectionTitle { width: parent.width; text: qsTr("This device") }
    Banner {
        width: parent.width
        visible: part.asks
        kind: Banner.Note
        text: qsTr("A desk has to let this phone in by its code: show it the symbol. Until then its records wait at the other devices; none is lost.")
    }
    TodayStanding { width: parent.width; viewModel: part.viewModel }
    JoinSymbol {
        objectName: "ownSymbol"
        anchors.horizontalCenter: parent.horizontalCenter
        visible: part.asks && part.viewModel.symbolSide > 0
        path: part.viewModel.symbol
        side: part.viewModel.symbolSide
    }
    JoinCode { objectName: "ownCode"; width: parent.width; value: part.viewModel.ownCode }
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
