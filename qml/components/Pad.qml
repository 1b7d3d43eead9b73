import QtQuick
import Spile.Theme
import Spile.Components

// A thing to press. It is never lower than 1.3 times its text, which wraps.
PressTarget {
    id: pad

    // Centred: a glyph beside the word, the hint below it. Leading: word and hint beside each other at the beginning.
    // Stacked: glyph, word and hint below one another.
    enum Arrangement { Centred, Leading, Stacked }

    property string text
    property string hint
    property int glyph: Glyph.None
    property int arrangement: Pad.Centred
    property bool act // brass: your move
    property bool chosen // brass and cut
    property bool marked // cut and outlined: the page that is shown, or one of two that a value lies between
    property bool small
    property int leastHeight: Theme.pad
    property int padding: Theme.padding
    property font textFont: pad.small ? Theme.label : Theme.strongBody
    property font hintFont: Theme.label

    readonly property real naturalWidth: face.implicitWidth + 2 * pad.padding
    readonly property bool brass: pad.enabled && (pad.act || pad.chosen)

    checked: pad.chosen
    name: pad.text.length > 0 && pad.hint.length > 0 ? qsTr("%1, %2").arg(pad.text).arg(pad.hint) : pad.text + pad.hint
    implicitWidth: Math.max(Theme.padWidth, pad.naturalWidth)
    implicitHeight: Math.max(pad.leastHeight, Math.ceil(1.3 * face.implicitHeight))

    PadGround {
        anchors.fill: parent
        brass: pad.brass
        cut: pad.chosen || pad.marked
        strong: pad.pressed || pad.marked
        refused: pad.blinking
        flat: !pad.enabled
    }
    PadFace {
        id: face
        anchors { fill: parent; leftMargin: pad.padding; rightMargin: pad.padding }
        text: pad.text
        hint: pad.hint
        glyph: pad.glyph
        arrangement: pad.arrangement
        textFont: pad.textFont
        hintFont: pad.hintFont
        tint: pad.brass ? Theme.colours.actText : pad.enabled ? Theme.colours.text : Theme.colours.secondText
        hintTint: pad.brass ? Theme.colours.actText : Theme.colours.secondText
    }
    FocusRing {}
}
