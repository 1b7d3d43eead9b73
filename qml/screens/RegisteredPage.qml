import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The barrel is registered: its code, large.
Page {
    id: page

    required property AppViewModel app
    readonly property RegisteringViewModel viewModel: page.app.registering

    title: qsTr("Registered")
    subtitle: page.viewModel.mark
    footer: [
        Pad {
            objectName: "toBarrel"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            act: true
            text: qsTr("Go to the barrel")
            onFired: page.app.openRegistered()
        },
        Pad {
            objectName: "another"
            width: parent.width
            text: qsTr("Register another like it")
            onFired: page.viewModel.another()
        }
    ]

    Text {
        width: parent.width
        text: page.viewModel.labelCode.length > 0 ? qsTr("Its label has this code:") : qsTr("Chalk this code on its head:")
        wrapMode: Text.Wrap
        color: Theme.colours.text
        font: Theme.body
    }
    Text {
        objectName: "code"
        width: parent.width
        text: page.viewModel.code
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Theme.code.pixelSize
        color: Theme.colours.text
        font: Theme.readout
    }
    Text {
        width: parent.width
        text: qsTr("It can be scanned once it has a label; until then type the code, or find the barrel in the list.")
        wrapMode: Text.Wrap
        color: Theme.colours.secondText
        font: Theme.body
    }
    Pad {
        objectName: "label"
        width: parent.width
        text: qsTr("Its label")
        hint: qsTr("As a file to print")
        onFired: page.app.openLabelsOfRegistered()
    }
}
