import QtQuick
import Spile.Theme
import Spile.Components

// A sign beside a word, never alone. Drawn on a grid of 24 with a stroke of one width and square ends, as if cut.
Item {
    id: glyph

    enum Kind {
        None, Back, Next, Undo, Erase, Less, More, Scan, Torch, Photo, Due, Today, Up, Down, Check, Person, Search,
        Caution, Refused
    }

    property int kind: Glyph.None
    property color tint: Theme.colours.text

    readonly property list<string> paths: [
        "",
        "M20 12 H5 M11 5 L4 12 L11 19", // Back
        "M4 12 H19 M13 5 L20 12 L13 19", // Next
        "M9 4 L4 9 L9 14 M4 9 H15 C22 9 22 19 15 19 H8", // Undo
        "M8 5 H21 V19 H8 L2 12 Z M11 9 L17 15 M17 9 L11 15", // Erase
        "M4 12 H20", // Less
        "M4 12 H20 M12 4 V20", // More
        "M4 9 V4 H9 M15 4 H20 V9 M20 15 V20 H15 M9 20 H4 V15 M8 12 H16", // Scan
        "M8 10 L6 4 H18 L16 10 M8 10 V21 H16 V10 Z M12 13 V16", // Torch
        "M3 7 H8 L10 4 H14 L16 7 H21 V20 H3 Z M12 10 L15.5 13.5 L12 17 L8.5 13.5 Z", // Photo
        "M5 3 H19 V9 L13 12 L19 15 V21 H5 Z", // Due: the notch of a row that is due
        "M4 6 H20 V20 H4 Z M4 10 H20 M8 3 V6 M16 3 V6 M8 15 H12", // Today
        "M12 20 V5 M5 11 L12 4 L19 11", // Up
        "M12 4 V19 M5 13 L12 20 L19 13", // Down
        "M4 13 L9 18 L20 6", // Check
        "M12 3 L16 5 V9 L12 11 L8 9 V5 Z M4 21 V18 L8 15 H16 L20 18 V21", // Person
        "M8 3.5 H12.5 L16.5 7.5 V12.5 L12.5 16.5 H8 L4 12.5 V7.5 Z M14.5 14.5 L21 21", // Search
        "M12 3 L22 20 H2 Z M12 9 V14 M12 16 V18", // Caution
        "M4 4 H20 V20 H4 Z M8 8 L16 16 M16 8 L8 16" // Refused
    ]
    readonly property bool pointsAlong: glyph.kind >= Glyph.Back && glyph.kind <= Glyph.Erase

    implicitWidth: Theme.glyph
    implicitHeight: Theme.glyph
    visible: glyph.kind !== Glyph.None
    Accessible.ignored: true

    Drawing {
        anchors.fill: parent
        grid: Qt.size(24, 24)
        path: glyph.paths[glyph.kind]
        stroke: glyph.tint
        strokeWidth: 2.5
        transform: Scale { // where text runs from the right, what points along it turns round
            origin.x: glyph.width / 2
            xScale: glyph.pointsAlong && glyph.LayoutMirroring.enabled ? -1 : 1
        }
    }
}
