import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The cellar is there and cannot be opened.
Page {
    id: page

    required property AppViewModel app

    title: qsTr("The cellar cannot be opened")
    footer: Pad {
        objectName: "tryAgain"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        text: qsTr("Try again")
        onFired: page.app.start()
    }

    Banner {
        width: parent.width
        kind: Banner.Refused
        text: page.app.problem
    }
}
