import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// A device is cut off: why, and what that means.
Page {
    id: page

    required property AppViewModel app
    readonly property DevicesViewModel viewModel: page.app.devices

    title: qsTr("Cut off %1").arg(page.viewModel.name)
    backShown: true
    onBackPressed: page.app.goBack()
    banner: Banner { // in sight wherever the page is scrolled to
        objectName: "error"
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    footer: Pad {
        objectName: "cut"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        text: qsTr("Cut it off")
        onFired: page.viewModel.cutOff()
    }

    Banner {
        objectName: "consequence"
        width: parent.width
        kind: Banner.Caution
        text: qsTr("What it records from now on is set aside on every device until somebody lets it count. What it has recorded so far stays.")
    }
    SectionTitle { width: parent.width; text: qsTr("Why?") }
    Chips {
        objectName: "reasons"
        width: parent.width
        mostInARow: 3
        words: page.viewModel.reasons
        choice: page.viewModel.reason
        onToggled: index => page.viewModel.chooseReason(index)
    }
    TextEntry {
        objectName: "own"
        width: parent.width
        label: qsTr("Or in your own words")
        text: page.viewModel.own
        onEdited: newText => page.viewModel.own = newText
    }
}
