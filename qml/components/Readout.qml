import QtQuick
import Spile.Theme
import Spile.Components

// A number that is read from a distance, with its unit. A point in the middle says that there is none yet.
Item {
    id: readout

    property string text
    property string unit
    readonly property bool beside: number.implicitWidth + Theme.padding + unitText.implicitWidth <= readout.width
    readonly property bool unitShown: readout.unit.length > 0 && readout.text.length > 0

    implicitWidth: number.implicitWidth + (readout.unitShown ? Theme.padding + unitText.implicitWidth : 0)
    implicitHeight: number.height + (readout.unitShown && !readout.beside ? unitText.height : 0)
    Accessible.role: Accessible.StaticText
    Accessible.name: readout.text.length === 0 ? qsTr("no value yet")
                   : readout.unitShown ? qsTr("%1 %2").arg(readout.text).arg(readout.unit) : readout.text

    Words {
        id: number
        objectName: "readout"
        anchors.left: parent.left
        width: Math.min(Math.ceil(implicitWidth), readout.width)
        wrapMode: Text.NoWrap
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Theme.body.pixelSize
        text: readout.text.length > 0 ? readout.text : "·"
        font: Theme.readout
        Accessible.ignored: true
    }
    Words {
        id: unitText
        anchors.left: readout.beside ? number.right : parent.left
        anchors.leftMargin: readout.beside ? Theme.padding : 0
        y: readout.beside ? number.baselineOffset - baselineOffset : number.height
        visible: readout.unitShown
        text: readout.unit
        font: Theme.glance
        color: Theme.colours.secondText
        Accessible.ignored: true
    }
}
