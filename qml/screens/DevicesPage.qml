import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The devices of the cellar and their clocks. This one asks to be let in until it is; at a desk, another one is let in,
// and one that is lost can be cut off.
Page {
    id: page

    required property AppViewModel app
    readonly property DevicesViewModel viewModel: page.app.devices
    readonly property bool asks: !page.app.joining.admitted && !page.app.joining.cutOff

    title: qsTr("Devices")
    subtitle: page.app.joining.cellarName
    backShown: true
    scroller: rows
    onBackPressed: page.app.goBack()

    footer: Pad {
        objectName: "letIn"
        width: parent.width
        visible: page.viewModel.desk
        text: qsTr("Let another device in")
        onFired: page.app.openAdmit()
    }

    DeviceList {
        id: rows
        objectName: "parts"
        lines: page.viewModel.devices
        onClockWanted: index => page.viewModel.openClock(index)
        onCutWanted: index => page.viewModel.choose(index)

        // Not bound, since Qt 6.4 makes no header of a bound component.
        // qmllint disable unqualified
        header: Column {
            width: rows.width
            spacing: Theme.gap

            Banner {
                objectName: "error"
                width: parent.width
                visible: page.viewModel.error.length > 0
                kind: Banner.Refused
                text: page.viewModel.error
            }
            JoinAsk {
                width: parent.width
                visible: page.asks
                viewModel: page.app.joining
            }
            Banner {
                objectName: "deskOnly"
                width: parent.width
                visible: page.viewModel.loaded && !page.viewModel.desk
                text: qsTr("Only a desk can let a device in or cut one off.")
            }
            WaitRows {
                width: parent.width
                waiting: !page.viewModel.loaded
            }
        }
        // qmllint enable unqualified
    }
}
