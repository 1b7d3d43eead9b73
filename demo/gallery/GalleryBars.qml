import QtQuick
import Spile.Components
import Spile.Theme

Item {
    Page {
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: undo.top }
        title: "Today"
        subtitle: "Tue 3 Oct"

        ListRow {
            width: parent.width
            showEdge: false
            title: "Bourbon 11, the one from the old farm by the river"
            code: "7K2-3XD"
            firstLine: "3 sheets this week"
        }
        ListRow {
            width: parent.width
            enabled: false
            standing: NotchEdge.Held
            standingWord: "Held back"
            title: "Rum 5"
            firstLine: "in somebody else's sheet"
        }
    }
    UndoBar {
        id: undo
        anchors { left: parent.left; right: parent.right; bottom: bar.top }
        shown: true
        text: "Rum 3: vanilla 7 kept"
    }
    PadBar {
        id: bar
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        labels: ["Due", "Scan", "Today"]
        glyphs: [Glyph.Due, Glyph.Scan, Glyph.Today]
        current: 2
    }
}
