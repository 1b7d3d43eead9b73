pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    readonly property list<string> words: ["Back", "Next", "Undo", "Erase", "Less", "More", "Scan", "Torch", "Photo",
        "Due", "Today", "Up", "Down", "Check", "Person", "Search", "Caution", "Refused"]

    title: "Signs"
    subtitle: "Never without a word"

    Row {
        objectName: "edges"
        spacing: Theme.margin
        NotchEdge { objectName: "edge0"; standing: NotchEdge.Resting }
        NotchEdge { objectName: "edge1"; standing: NotchEdge.Soon }
        NotchEdge { objectName: "edge2"; standing: NotchEdge.Due }
        NotchEdge { objectName: "edge3"; standing: NotchEdge.Overdue }
        NotchEdge { objectName: "edge4"; standing: NotchEdge.Held }
    }
    Grid {
        id: grid
        width: parent.width
        columns: Theme.largeText ? 2 : 3
        spacing: Theme.gap
        Repeater {
            model: page.words
            Row {
                id: sign
                required property int index
                required property string modelData
                width: (grid.width - (grid.columns - 1) * grid.spacing) / grid.columns
                spacing: Theme.padding
                Glyph { id: glyph; anchors.verticalCenter: parent.verticalCenter; kind: sign.index + 1 }
                Words {
                    anchors.verticalCenter: parent.verticalCenter
                    width: sign.width - glyph.width - sign.spacing
                    text: sign.modelData
                    font: Theme.label
                }
            }
        }
    }
}
