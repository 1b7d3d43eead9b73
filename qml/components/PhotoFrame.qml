import QtQuick
import Spile.Theme
import Spile.Components

// A photo on neutral grey, so that its colour is seen as it is. Whole, never cropped.
Item {
    id: frame

    property url source
    property string description
    readonly property bool absent: image.status === Image.Error

    implicitWidth: Theme.listColumn
    implicitHeight: Math.round(frame.width * 0.75)
    Accessible.role: Accessible.Graphic
    Accessible.name: frame.description

    Rectangle {
        anchors { left: parent.left; right: parent.right; top: parent.top }
        height: parent.height - (note.visible ? note.height : 0)
        color: Theme.colours.photoSurround

        Image {
            id: image
            objectName: "photo"
            anchors { fill: parent; margins: Theme.padding }
            asynchronous: true
            autoTransform: true
            fillMode: Image.PreserveAspectFit
            sourceSize.width: Math.ceil(2 * frame.width) // photos are larger than any screen of ours
            source: frame.source
        }
    }
    Words {
        id: note
        objectName: "absent"
        anchors.bottom: parent.bottom
        width: parent.width
        visible: frame.absent
        text: qsTr("The photo is not on this device.")
        color: Theme.colours.secondText
    }
}
