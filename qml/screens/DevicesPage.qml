import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The devices of the cellar and their clocks; at a desk, one that is lost can be cut off.
Page {
    id: page

    required property AppViewModel app
    readonly property DevicesViewModel viewModel: page.app.devices

    title: qsTr("Devices")
    subtitle: page.app.joining.cellarName
    backShown: true
    onBackPressed: page.app.goBack()

    Banner {
        objectName: "error"
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    Banner {
        objectName: "deskOnly"
        width: parent.width
        visible: page.viewModel.loaded && !page.viewModel.desk
        text: qsTr("Only a desk can cut a device off.")
    }
    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded
    }
    PartList {
        objectName: "parts"
        width: parent.width
        rows: page.viewModel.devices
        onAct: index => page.viewModel.openClock(index)
        onActOther: index => page.viewModel.choose(index)
    }
}
