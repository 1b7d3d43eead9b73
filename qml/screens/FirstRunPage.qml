import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// An app without a cellar: two ways to begin.
Item {
    id: first

    required property AppViewModel app
    readonly property bool takingIn: first.app.navigator.page === Navigator.TakeIn

    Page {
        anchors.fill: parent
        visible: !first.takingIn
        title: qsTr("Spile")
        subtitle: qsTr("The records of beer that ages in spirit barrels. All of it stays on this device.")
        footer: [
            Pad {
                objectName: "registerFirst"
                width: parent.width
                height: Math.max(implicitHeight, Theme.main)
                act: true
                text: qsTr("Register a barrel")
                hint: qsTr("Begins a new cellar on this device")
                onFired: first.app.beginWithBarrel()
            },
            Pad {
                objectName: "takeInFirst"
                width: parent.width
                height: Math.max(implicitHeight, Theme.main)
                text: qsTr("Take in a day file")
                hint: qsTr("This device joins a cellar that is there already")
                onFired: first.app.beginWithDayFile()
            }
        ]

        Banner {
            width: parent.width
            visible: first.app.problem.length > 0
            kind: Banner.Refused
            text: first.app.problem
        }
        TextEntry {
            objectName: "cellarName"
            width: parent.width
            label: qsTr("What a new cellar is called")
            text: first.app.newCellarName
            onEdited: newText => first.app.newCellarName = newText
        }
    }
    PartLoader {
        anchors.fill: parent
        app: first.app
        shown: first.takingIn
        file: "TakeInPage.qml"
    }
}
