pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// At day's end: what is new, the file, and where it goes.
Page {
    id: page

    required property AppViewModel app
    readonly property DayFileViewModel viewModel: page.app.dayFile
    readonly property bool written: page.viewModel.fileName.length > 0

    title: qsTr("Day file")
    subtitle: page.viewModel.unsentText
    backShown: true
    onBackPressed: page.app.goBack()
    banner: Banner { // in sight wherever the page is scrolled to
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    footer: [
        Pad {
            objectName: "write"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: !page.viewModel.writing
            act: !page.written
            text: page.written ? qsTr("Write it anew") : qsTr("Write the day file")
            onFired: page.viewModel.write()
        },
        Pad {
            objectName: "stop"
            width: parent.width
            visible: page.viewModel.writing
            text: qsTr("Stop")
            onFired: page.viewModel.cancel()
        }
    ]

    Banner {
        width: parent.width
        visible: page.viewModel.openSheets > 0
        kind: Banner.Note
        text: qsTr("%n sheet(s) are still open. What is on them is not in the file until they are closed.", "",
                   page.viewModel.openSheets)
    }
    Progress {
        width: parent.width
        visible: page.viewModel.writing
        value: page.viewModel.progress
        text: qsTr("Writing")
    }
    Column {
        width: parent.width
        spacing: Theme.gap
        visible: page.written

        Banner {
            objectName: "notYet"
            width: parent.width
            visible: page.viewModel.handedText.length === 0
            kind: Banner.Note
            text: qsTr("The file is written on this device and read back whole. It is not handed over yet.")
        }
        Words { objectName: "file"; width: parent.width; text: page.viewModel.fileName; wrapMode: Text.WrapAnywhere; font: Theme.strongBody }
        Words { width: parent.width; text: page.viewModel.fileText }
        Banner {
            objectName: "leftOut"
            width: parent.width
            visible: page.viewModel.leftOutText.length > 0
            kind: Banner.Caution
            text: page.viewModel.leftOutText
        }
        DayFileSeal { width: parent.width; passphrase: page.viewModel.passphrase }
        SectionTitle { width: parent.width; text: qsTr("Hand it over: copy it to") }
        Repeater {
            model: page.viewModel.targets

            Pad {
                required property string modelData
                required property int index

                objectName: "target" + index
                width: parent.width
                act: page.viewModel.handedText.length === 0 && index === 0
                text: modelData
                onFired: page.viewModel.handOver(index)
            }
        }
        Banner {
            objectName: "handed"
            width: parent.width
            visible: page.viewModel.handedText.length > 0
            kind: Banner.Note
            text: page.viewModel.handedText
        }
    }
    Column {
        width: parent.width
        spacing: Theme.gap
        visible: !page.written

        Repeater {
            model: page.viewModel.unsentKinds

            Text {
                required property string modelData
                width: parent.width
                text: modelData
                wrapMode: Text.Wrap
                color: Theme.colours.text
                font: Theme.body
            }
        }
        SectionTitle { width: parent.width; text: qsTr("For whom?") }
        Chips {
            objectName: "receivers"
            width: parent.width
            words: page.viewModel.receivers
            choice: page.viewModel.receiver
            onToggled: index => page.viewModel.receiver = index
        }
        SectionTitle { width: parent.width; text: qsTr("How does it go?") }
        Chips {
            objectName: "sealed"
            width: parent.width
            words: [qsTr("As it is, from hand to hand"), qsTr("Sealed with a passphrase")]
            choice: page.viewModel.sealed ? 1 : 0
            onToggled: index => page.viewModel.sealed = index === 1
        }
    }
    Text {
        width: parent.width
        text: page.viewModel.lastText
        wrapMode: Text.Wrap
        color: Theme.colours.secondText
        font: Theme.body
    }
    SectionTitle { width: parent.width; text: qsTr("What other devices have confirmed") }
    Words {
        width: parent.width
        visible: page.viewModel.receipts.length === 0
        text: qsTr("Nothing yet: a device confirms by a day file of its own.")
        color: Theme.colours.secondText
    }
    Repeater {
        model: page.viewModel.receipts

        Text {
            required property string modelData
            width: parent.width
            text: modelData
            wrapMode: Text.Wrap
            color: Theme.colours.text
            font: Theme.body
        }
    }
    Words {
        width: parent.width
        visible: page.written
        text: qsTr("The file lies at %1").arg(page.viewModel.filePath)
        wrapMode: Text.WrapAnywhere
        color: Theme.colours.secondText
    }
}
