import QtQuick
import Spile.Theme
import Spile.Components

// The way back, what the page is about, and who records. The title stands between the pads if it fits there, else
// below.
Item {
    id: header

    property string title
    property string subtitle
    property bool backShown
    property string who

    signal backPressed()
    signal whoPressed()

    readonly property bool low: Theme.pads === Theme.Low
    readonly property real backRoom: back.visible ? back.width + Theme.padding : 0
    readonly property real whoRoom: person.visible ? person.width + Theme.padding : 0
    readonly property real between: header.width - header.backRoom - header.whoRoom
    readonly property int linesBeside: titleSizer.lineCount + (header.subtitle.length > 0 ? subtitleSizer.lineCount : 0)
    readonly property bool wordsFit: Math.max(titleSizer.contentWidth, subtitleSizer.contentWidth) <= header.between
    readonly property bool beside: header.wordsFit && header.linesBeside <= (header.low ? 2 : 3)
    readonly property real padHeight: Math.max(back.visible ? back.height : 0, person.visible ? person.height : 0)

    implicitHeight: header.beside ? Math.max(header.padHeight, titles.height)
                                  : header.padHeight + (header.padHeight > 0 ? Theme.padding : 0) + titles.height

    // How the title would stand between the pads.
    Words {
        id: titleSizer
        width: header.between
        visible: false
        wrapMode: Text.WordWrap
        text: header.title
        font: titleText.font
    }
    Words {
        id: subtitleSizer
        width: header.between
        visible: false
        wrapMode: Text.WordWrap
        text: header.subtitle
        font: subtitleText.font
    }
    Pad {
        id: back
        objectName: "back"
        anchors { left: parent.left; top: parent.top }
        width: Math.min(implicitWidth, (header.width - Theme.gap) / 2)
        visible: header.backShown
        small: true
        glyph: Glyph.Back
        text: qsTr("Back")
        onFired: header.backPressed()
    }
    Pad {
        id: person
        objectName: "who"
        anchors { right: parent.right; top: parent.top }
        width: Math.min(implicitWidth, (header.width - Theme.gap) / 2)
        visible: header.who.length > 0
        small: true
        glyph: Glyph.Person
        text: header.who
        name: qsTr("%1 records here. Change.").arg(header.who)
        onFired: header.whoPressed()
    }
    Column {
        id: titles
        anchors {
            left: header.beside ? back.right : parent.left
            leftMargin: header.beside && back.visible ? Theme.padding : header.beside ? -back.width : 0
            right: header.beside ? person.left : parent.right
            rightMargin: header.beside && person.visible ? Theme.padding : header.beside ? -person.width : 0
            top: parent.top
            topMargin: header.beside ? Math.max(0, (header.padHeight - height) / 2) : header.padHeight + Theme.padding
        }

        Words {
            id: titleText
            objectName: "title"
            width: parent.width
            text: header.title
            font: header.low ? Theme.strongBody : Theme.strongGlance
            Accessible.role: Accessible.Heading
            Accessible.name: header.title
        }
        Words {
            id: subtitleText
            objectName: "subtitle"
            width: parent.width
            visible: header.subtitle.length > 0
            text: header.subtitle
            font: header.low ? Theme.label : Theme.body
            color: Theme.colours.secondText
        }
    }
}
