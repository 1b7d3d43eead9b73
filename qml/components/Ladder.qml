pragma ComponentBehavior: Bound
import QtQuick
import Spile.Theme
import Spile.Components

// Nine steps of a score: five rungs, and a touch more or less. It keeps nothing: `value` says what is chosen. An even
// value lies between two rungs and marks both.
Column {
    id: ladder

    property int value // 1 to 9; 0: not scored
    property bool notJudged
    required property list<string> words // for 9, 7, 5, 3 and 1
    readonly property bool scored: ladder.value > 0 && !ladder.notJudged

    signal chosen(int value)
    signal nudged(int by)

    spacing: Theme.gap

    Repeater {
        model: 5
        Pad {
            id: rung
            required property int index
            readonly property int step: 9 - 2 * rung.index

            objectName: "rung" + rung.step
            width: ladder.width
            leastHeight: Theme.rung
            arrangement: Pad.Leading
            padding: Theme.margin
            textFont: Theme.code
            hintFont: Theme.strongBody
            text: rung.step.toString()
            hint: ladder.words[rung.index]
            name: qsTr("%1, %2").arg(rung.hint).arg(rung.text)
            checkable: true
            chosen: ladder.scored && ladder.value === rung.step
            marked: ladder.scored && Math.abs(ladder.value - rung.step) === 1
            onFired: ladder.chosen(rung.step)
        }
    }
    Row {
        id: touches
        readonly property real share: (ladder.width - Theme.gap) / 2
        readonly property real common: Math.max(less.implicitHeight, more.implicitHeight)
        spacing: Theme.gap

        Pad {
            id: less
            objectName: "less"
            width: touches.share
            height: touches.common
            enabled: ladder.scored
            small: true
            padding: Theme.tightPadding
            glyph: Glyph.Less
            text: qsTr("a touch less")
            onFired: ladder.nudged(-1)
        }
        Pad {
            id: more
            objectName: "more"
            width: touches.share
            height: touches.common
            enabled: ladder.scored
            small: true
            padding: Theme.tightPadding
            glyph: Glyph.More
            text: qsTr("a touch more")
            onFired: ladder.nudged(1)
        }
    }
}
