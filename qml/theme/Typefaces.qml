import QtQuick

// The fonts that are built into the app, so that text has the same size on every machine.
QtObject {
    readonly property FontLoader regular: FontLoader { source: "fonts/Inter-Regular.otf" }
    readonly property FontLoader semiBold: FontLoader { source: "fonts/Inter-SemiBold.otf" }
    readonly property FontLoader bold: FontLoader { source: "fonts/Inter-Bold.otf" }
    // All digits of one width, and 0 unlike O.
    readonly property FontLoader numerals: FontLoader { source: "fonts/B612Mono-Bold.otf" }
}
