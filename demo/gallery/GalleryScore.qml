import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    property int value: 8

    title: "Vanilla"
    subtitle: "3 of 9 · 417"
    backShown: true
    footer: Row {
        id: foot
        width: parent.width
        spacing: Theme.gap
        Pad {
            width: (foot.width - foot.spacing) * 0.45
            height: Math.max(implicitHeight, next.implicitHeight)
            glyph: Glyph.Undo
            text: "Undo"
        }
        Pad {
            id: next
            width: (foot.width - foot.spacing) * 0.55
            act: page.value > 0
            glyph: Glyph.Next
            text: "Next"
            hint: "Vanilla: " + page.value
        }
    }

    Ladder {
        objectName: "ladder"
        width: parent.width
        value: page.value
        words: ["dominant", "strong", "clear", "slight", "none"]
        onChosen: value => page.value = value
        onNudged: by => page.value = Theme.within(page.value + by, 1, 9)
    }
}
