import QtQuick
import Spile.Components
import Spile.Theme

// The symbol by which a device asks to be let in: black on white in every palette, its quiet zone inside, to be read
// from this screen by another device's camera.
Rectangle {
    id: symbol

    required property string path
    required property int side // modules, with the quiet zone

    width: Math.min(parent.width, Theme.mm(60))
    height: width
    color: Theme.colours.symbolPaper
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("The code of this device as a symbol, for another device's camera")

    Drawing {
        objectName: "modules"
        anchors.fill: parent
        path: symbol.path
        grid: Qt.size(symbol.side, symbol.side)
        fill: Theme.colours.symbolInk
    }
}
