pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// The head of the barrel as it lies in the rack, seen from the front, with the liquid behind it. A gauge: marks on the
// rim stand at each quarter of the height.
Item {
    id: head

    property real level: -1 // share of the inner height; -1: not known
    property real outlookLevel: -1 // a thin line; -1: none
    property color liquid: Theme.colours.beer
    property string description

    readonly property real outer: Math.min(head.width, head.height) / 2
    readonly property real inner: head.outer * 0.92 // inside the rim
    readonly property bool known: head.level >= 0

    implicitWidth: Theme.headPicture
    implicitHeight: Theme.headPicture
    Accessible.role: Accessible.Graphic
    Accessible.name: head.description

    // Half the width of the surface, and how far below the top it lies.
    function halfSurface(level: real): real {
        const share = Theme.within(level, 0, 1)
        return 2 * head.inner * Math.sqrt(share * (1 - share))
    }
    function heightOf(level: real): real {
        return head.outer + head.inner * (1 - 2 * Theme.within(level, 0, 1))
    }

    Item {
        anchors.centerIn: parent
        width: 2 * head.outer
        height: width

        Rectangle { // the rim
            anchors.fill: parent
            radius: width / 2
            color: Theme.colours.ground2
            border.width: Theme.outline
            border.color: Theme.colours.line
        }
        Rectangle {
            anchors.centerIn: parent
            width: 2 * head.inner
            height: width
            radius: head.inner
            color: Theme.colours.ground1
        }
        Item { // the part of the circle below the surface
            objectName: "liquid"
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
            height: parent.height - head.heightOf(head.level)
            visible: head.level > 0
            clip: true
            Rectangle {
                anchors { horizontalCenter: parent.horizontalCenter; bottom: parent.bottom }
                anchors.bottomMargin: head.outer - head.inner
                width: 2 * head.inner
                height: width
                radius: head.inner
                color: head.liquid
            }
        }
        Repeater { // between the boards, upright so that none is taken for a surface
            model: [-0.72, -0.38, 0, 0.38, 0.72]
            Rectangle {
                required property real modelData
                x: head.outer + head.inner * modelData
                y: head.outer - height / 2
                visible: head.known // else they would run through the words
                width: Theme.hairline
                height: 2 * head.inner * Math.sqrt(1 - modelData * modelData)
                opacity: 0.5
                color: Theme.colours.line
            }
        }
        Rectangle { // the inner edge of the rim, over the liquid
            anchors.centerIn: parent
            width: 2 * head.inner
            height: width
            radius: head.inner
            color: "transparent"
            border.width: Theme.outline
            border.color: Theme.colours.line
        }
        Repeater {
            model: [0.25, 0.5, 0.75]
            Item {
                id: quarter
                required property real modelData
                y: head.heightOf(quarter.modelData)
                Rectangle {
                    x: head.outer - head.halfSurface(quarter.modelData) - width / 2
                    width: Theme.padding
                    height: Theme.outline
                    color: Theme.colours.line
                }
                Rectangle {
                    x: head.outer + head.halfSurface(quarter.modelData) - width / 2
                    width: Theme.padding
                    height: Theme.outline
                    color: Theme.colours.line
                }
            }
        }
        Rectangle {
            objectName: "surface"
            anchors.horizontalCenter: parent.horizontalCenter
            y: head.heightOf(head.level) - height / 2
            width: 2 * head.halfSurface(head.level)
            height: Theme.focusRing
            visible: head.known
            color: Theme.colours.text
        }
        Rectangle { // its edges keep it apart from a liquid of any colour
            objectName: "outlook"
            anchors.horizontalCenter: parent.horizontalCenter
            y: head.heightOf(head.outlookLevel) - height / 2
            width: 2 * head.halfSurface(head.outlookLevel)
            height: 3 * Theme.hairline
            visible: head.outlookLevel >= 0
            color: Theme.colours.ground0
            Rectangle {
                anchors.centerIn: parent
                width: parent.width
                height: Theme.hairline
                color: Theme.colours.text
            }
        }
        Words {
            objectName: "unknown"
            anchors.centerIn: parent
            width: 1.6 * head.inner
            horizontalAlignment: Text.AlignHCenter
            visible: !head.known
            text: qsTr("not gauged")
            color: Theme.colours.secondText
            Accessible.ignored: true
        }
    }
}
