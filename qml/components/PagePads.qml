import QtQuick
import Spile.Theme
import Spile.Components

// Moves what does not fit on the page by a page, for hands that cannot drag.
Row {
    id: pads

    required property Flickable scroller
    property real leastHeight: 0 // of what stands beside them
    readonly property real last: pads.scroller.originY + Math.max(0, pads.scroller.contentHeight - pads.scroller.height)

    readonly property bool shortWords: Theme.largeText || pads.width < Theme.mm(45)

    spacing: Theme.gap

    Pad {
        id: up
        objectName: "pageUp"
        height: Math.max(up.implicitHeight, down.implicitHeight, pads.leastHeight)
        width: (pads.width - pads.spacing) / 2
        leastHeight: Theme.rung
        enabled: !pads.scroller.atYBeginning
        small: true
        glyph: Glyph.Up
        text: pads.shortWords ? qsTr("Up") : qsTr("Page up")
        name: qsTr("Page up")
        onFired: pads.move(-1)
    }
    Pad {
        id: down
        objectName: "pageDown"
        height: up.height
        width: (pads.width - pads.spacing) / 2
        leastHeight: Theme.rung
        enabled: !pads.scroller.atYEnd
        small: true
        glyph: Glyph.Down
        text: pads.shortWords ? qsTr("Down") : qsTr("Page down")
        name: qsTr("Page down")
        onFired: pads.move(1)
    }

    // What was at the end of the page is at its beginning then, so that nothing is passed over.
    function move(pages: int) {
        const step = Math.max(pads.scroller.height / 2, pads.scroller.height - Theme.row)
        pads.show(pads.scroller.contentY + pages * step)
    }
    function show(y: real) {
        pads.scroller.cancelFlick()
        pads.scroller.contentY = Theme.within(y, pads.scroller.originY, pads.last)
    }
    // Brings what has the keyboard into view.
    function reveal(top: real, bottom: real) {
        if (top < pads.scroller.contentY) {
            pads.show(top - Theme.padding)
        } else if (bottom > pads.scroller.contentY + pads.scroller.height) {
            pads.show(bottom + Theme.padding - pads.scroller.height)
        }
    }
}
