import QtQuick
import Spile.Theme
import Spile.Components

// A running time that can be read from the barrel. It does not move while its digits change. When time is up the face
// is filled, and the caption says by how much.
Rectangle {
    id: face

    property string text
    property string caption
    property bool overdue

    implicitWidth: Theme.listColumn
    implicitHeight: column.height + 2 * Theme.padding
    radius: Theme.corner
    color: face.overdue ? Theme.colours.act : Theme.colours.ground0
    Accessible.role: Accessible.StaticText
    Accessible.name: face.caption.length > 0 ? qsTr("%1, %2").arg(face.text).arg(face.caption) : face.text

    Column {
        id: column
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.padding

        Words {
            objectName: "time"
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.NoWrap
            fontSizeMode: Text.HorizontalFit // hours may not fit
            minimumPixelSize: Theme.glance.pixelSize
            text: face.text
            font: Theme.timer
            color: face.overdue ? Theme.colours.actText : Theme.colours.text
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            visible: face.caption.length > 0
            text: face.caption
            font: Theme.strongBody
            color: face.overdue ? Theme.colours.actText : Theme.colours.secondText
            Accessible.ignored: true
        }
    }
}
