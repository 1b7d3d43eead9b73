import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What keeps this device's records from counting.
Column {
    id: standing

    required property JoiningViewModel viewModel

    spacing: Theme.gap
    visible: standing.viewModel.cutOff || standing.viewModel.readsOnly

    Banner {
        objectName: "cutOff"
        width: parent.width
        visible: standing.viewModel.cutOff
        kind: Banner.Caution
        text: qsTr("This device was cut off. What it records is set aside.")
    }
    Banner {
        objectName: "readsOnly"
        width: parent.width
        visible: standing.viewModel.readsOnly
        kind: Banner.Caution
        text: qsTr("A newer Spile wrote this cellar. Update; until then it is for reading.")
    }
}
