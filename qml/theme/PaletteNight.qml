import QtQuick

// Red on black, for eyes that are used to the dark. Hue means nothing here: one tint serves all states.
PaletteTokens {
    id: colours

    readonly property color glow: "#ff9b73"
    readonly property color dimmedGlow: "#f08b65"
    readonly property color accent: "#ffb38f"
    readonly property color edge: "#9a563e"

    ground0: "#0a0604"
    ground1: "#170c08"
    ground2: "#2a140c"
    text: colours.glow
    secondText: colours.dimmedGlow
    act: colours.accent
    actText: colours.ground0
    resting: colours.dimmedGlow
    soon: colours.dimmedGlow
    due: colours.dimmedGlow
    overdue: colours.dimmedGlow
    held: colours.dimmedGlow
    line: colours.edge
    focus: colours.glow
    warning: colours.glow
    band: "#3c2218" // edge, 35 % over ground0
    bandEdge: colours.edge
    firstLine: colours.accent
    secondLine: colours.glow
    thirdLine: colours.dimmedGlow
    beer: "#6e3322"
}
