pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// A day file of another device is taken in.
Page {
    id: page

    required property AppViewModel app
    readonly property TakeInViewModel viewModel: page.app.takeIn

    title: qsTr("Take in a day file")
    subtitle: page.viewModel.joins ? qsTr("This device then holds a copy of that cellar") : ""
    backShown: true
    onBackPressed: page.app.goBack()
    banner: Banner { // in sight wherever the page is scrolled to
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    footer: Pad {
        objectName: "stop"
        width: parent.width
        visible: page.viewModel.busy && !page.viewModel.joins
        text: qsTr("Stop")
        onFired: page.viewModel.cancel()
    }

    Banner {
        objectName: "result"
        width: parent.width
        visible: page.viewModel.result.length > 0
        kind: Banner.Note
        text: page.viewModel.result
    }
    Banner {
        objectName: "renewed"
        width: parent.width
        visible: page.viewModel.renewed.length > 0
        kind: Banner.Caution
        text: page.viewModel.renewed
        padText: page.viewModel.needsLettingIn ? qsTr("Show its code") : ""
        onActed: page.app.navigator.open(Navigator.Settings)
    }
    Banner {
        objectName: "ahead"
        width: parent.width
        visible: page.viewModel.ahead.length > 0
        kind: Banner.Caution
        text: page.viewModel.ahead
        padText: qsTr("Its clock")
        onActed: page.viewModel.openClock()
    }
    TextEntry {
        objectName: "passphrase"
        width: parent.width
        visible: page.viewModel.asksPassphrase
        label: qsTr("%1 is sealed. Type its passphrase").arg(page.viewModel.sealedName)
        inputHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        text: page.viewModel.passphrase
        onEdited: newText => page.viewModel.passphrase = newText
        onDone: page.viewModel.unseal()
    }
    Pad {
        objectName: "unseal"
        width: parent.width
        visible: page.viewModel.asksPassphrase
        enabled: !page.viewModel.busy && page.viewModel.passphrase.length > 0
        act: true
        text: qsTr("Open it and take it in")
        onFired: page.viewModel.unseal()
    }
    Progress {
        width: parent.width
        visible: page.viewModel.busy
        value: page.viewModel.progress
        text: qsTr("Checking and adding")
    }
    SectionTitle {
        width: parent.width
        text: page.viewModel.files.length > 0 ? qsTr("Found on this device") : qsTr("No day file lies in the usual places")
    }
    Words {
        objectName: "lookedIn"
        width: parent.width
        visible: page.viewModel.files.length === 0
        text: page.viewModel.lookedIn
        color: Theme.colours.secondText
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Repeater {
        model: page.viewModel.files

        Pad {
            required property string modelData
            required property int index

            objectName: "file" + index
            width: parent.width
            enabled: !page.viewModel.busy
            small: true
            text: modelData
            onFired: page.viewModel.takeFound(index)
        }
    }
    Pad {
        objectName: "again"
        width: parent.width
        small: true
        enabled: !page.viewModel.busy
        text: qsTr("Look again")
        onFired: page.viewModel.begin()
    }
    TextEntry {
        objectName: "path"
        width: parent.width
        label: qsTr("Or say where it lies, or drop it here")
        text: page.viewModel.path
        onEdited: newText => page.viewModel.path = newText
        onDone: page.viewModel.takePath()
    }
    Pad {
        objectName: "takePath"
        width: parent.width
        visible: page.viewModel.path.length > 0
        enabled: !page.viewModel.busy
        act: true
        text: qsTr("Take this file in")
        onFired: page.viewModel.takePath()
    }
    DropArea {
        parent: page
        anchors.fill: parent
        onDropped: drop => {
            if (drop.hasUrls) {
                page.viewModel.takeUrl(drop.urls[0])
            }
        }
    }
}
