import QtQuick

// The fonts that are built into the app, so that text has the same size on every machine.
QtObject {
    readonly property FontLoader regular: FontLoader { source: "fonts/Inter-Regular.otf" }
    readonly property FontLoader semiBold: FontLoader { source: "fonts/Inter-SemiBold.otf" }
    readonly property FontLoader bold: FontLoader { source: "fonts/Inter-Bold.otf" }
    // All digits of one width, points and colons narrow. The alphabet of barrel codes has no O and I to be mistaken.
    readonly property FontLoader numerals: FontLoader { source: "fonts/B612-Bold.otf" }
}
