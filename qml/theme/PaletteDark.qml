import QtQuick

// Charred wood, chalk, and brass for what is your move.
PaletteTokens {
    id: colours

    readonly property color chalk: "#f6efe4"
    readonly property color brass: "#e8b755"
    readonly property color ember: "#e95f0e"
    readonly property color sky: "#7fb6f1"
    readonly property color slate: "#938c87"

    ground0: "#14100c"
    ground1: "#211a14"
    ground2: "#33291f"
    text: colours.chalk
    secondText: "#c9bba8"
    act: colours.brass
    actText: colours.ground0
    resting: colours.slate
    soon: colours.sky
    due: colours.brass
    overdue: colours.ember
    held: colours.chalk
    line: colours.slate
    focus: colours.sky
    warning: colours.ember
    band: "#5e4a26" // brass, 35 % over ground0
    bandEdge: colours.slate
    firstLine: colours.brass
    secondLine: colours.sky
    thirdLine: colours.chalk
    beer: "#8a5a2b"
}
