import QtQuick
import Spile.Theme
import Spile.Components

// What stands on a pad: a glyph, the main word, and a hint. Text wraps in the width that the face is given. Before a word
// would be broken, the glyph goes above it, and then the word becomes smaller.
Item {
    id: face

    property string text
    property string hint
    property int glyph: Glyph.None
    property int arrangement: Pad.Centred
    property color tint: Theme.colours.text
    property color hintTint: Theme.colours.secondText
    property font textFont: Theme.strongBody
    property font hintFont: Theme.label

    readonly property bool leading: face.arrangement === Pad.Leading
    readonly property real glyphRoom: sign.visible ? sign.width + Theme.padding : 0
    readonly property real besideGlyph: face.width - face.glyphRoom
    readonly property bool stacked: face.arrangement === Pad.Stacked || sign.visible && !face.leading && face.width > 0
                                    && (sizer.contentWidth > face.besideGlyph || face.oneLineIfStacked)
    readonly property bool oneLineIfStacked: sizer.implicitWidth > face.besideGlyph && sizer.implicitWidth <= face.width
    readonly property real room: face.stacked ? face.width : face.besideGlyph
    readonly property bool fromLeft: face.leading || sign.visible && !face.stacked
    readonly property bool hintBeside: face.leading && hint.visible

    implicitWidth: (face.arrangement === Pad.Stacked ? 0 : face.glyphRoom)
                   + (face.hintBeside ? sizer.implicitWidth + words.spacing + hint.implicitWidth
                                      : Math.max(sizer.implicitWidth, hint.implicitWidth))
    implicitHeight: grid.implicitHeight

    Words { // how wide the word is by itself, and the longest of its words
        id: sizer
        width: 1
        visible: false
        wrapMode: Text.WordWrap
        text: face.text
        font: face.textFont
    }
    Words { // how wide it is in one line, as it is shown: wrapped text tells that anew whenever its width is set
        id: natural
        visible: false
        wrapMode: Text.NoWrap
        text: face.text
        font: word.font
    }
    Grid {
        id: grid
        anchors.verticalCenter: parent.verticalCenter
        anchors.left: face.leading ? parent.left : undefined
        anchors.horizontalCenter: face.leading ? undefined : parent.horizontalCenter
        columns: face.stacked || !sign.visible ? 1 : 2 // a column without anything in it would still take a gap
        spacing: face.stacked ? 0 : Theme.padding
        verticalItemAlignment: Grid.AlignVCenter
        horizontalItemAlignment: Grid.AlignHCenter

        Glyph {
            id: sign
            kind: face.glyph
            tint: face.tint
        }
        Grid {
            id: words
            columns: face.leading && word.visible && hint.visible ? 2 : 1
            spacing: face.leading ? Theme.padding : 0
            verticalItemAlignment: Grid.AlignVCenter
            horizontalItemAlignment: face.fromLeft ? Grid.AlignLeft : Grid.AlignHCenter

            Words {
                id: word
                width: Math.min(Math.ceil(natural.implicitWidth), face.room)
                visible: face.text.length > 0
                text: face.text
                font: Theme.fitted(face.textFont, sizer.contentWidth, face.width > 0 ? face.room : sizer.contentWidth)
                color: face.tint
                horizontalAlignment: face.fromLeft ? Text.AlignLeft : Text.AlignHCenter
                Accessible.ignored: true // the pad has the name
            }
            Words {
                id: hint
                width: Math.min(Math.ceil(implicitWidth),
                                face.hintBeside && word.visible ? face.room - word.width - words.spacing : face.room)
                visible: face.hint.length > 0
                text: face.hint
                font: face.hintFont
                color: face.hintTint
                horizontalAlignment: word.horizontalAlignment
                Accessible.ignored: true
            }
        }
    }
}
