import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The records of an older version are brought up to this one. What takes no second is not shown.
Page {
    id: page

    required property AppViewModel app
    property real broughtUp: page.app.broughtUp

    title: qsTr("One moment")
    visible: false

    Timer {
        interval: 800
        running: true
        onTriggered: page.visible = true
    }
    Progress {
        objectName: "broughtUp"
        width: parent.width
        value: page.broughtUp
        text: qsTr("The records are brought into the form that this version of Spile keeps them in.")
    }
    Words {
        width: parent.width
        text: qsTr("Many of them take minutes. If the app is closed meanwhile nothing is lost: it begins anew.")
        color: Theme.colours.secondText
    }
}
