import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// This device asks to be let in: its symbol, to be read from this screen, and the same as a code to type.
Column {
    id: ask

    required property JoiningViewModel viewModel

    spacing: Theme.gap

    JoinSymbol {
        objectName: "ownSymbol"
        anchors.horizontalCenter: parent.horizontalCenter
        visible: ask.viewModel.symbolSide > 0
        path: ask.viewModel.symbol
        side: ask.viewModel.symbolSide
    }
    JoinCode { objectName: "ownCode"; width: parent.width; value: ask.viewModel.ownCode }
    Banner { // behind them, so that they stand whole on a small screen
        width: parent.width
        kind: Banner.Note
        text: qsTr("A desk has to let this device in by its code: show it the symbol. Until then its records wait at the other devices; none is lost.")
    }
}
