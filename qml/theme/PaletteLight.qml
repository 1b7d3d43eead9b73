import QtQuick

// Paper and ink, for daylight. Brass and slate are too close to ground2 to be marks there; text on brass is bold and
// large.
PaletteTokens {
    id: colours

    readonly property color ink: "#1b140d"
    readonly property color ash: "#4a3f33"
    readonly property color brass: "#af730f"
    readonly property color ember: "#ab1c23"
    readonly property color sky: "#2b6490"
    readonly property color slate: "#827d76"

    ground0: "#fbf7f0"
    ground1: "#efe7da"
    ground2: "#e2d6c4"
    text: colours.ink
    secondText: colours.ash
    act: colours.brass
    actText: colours.ink
    resting: colours.slate
    soon: colours.sky
    due: colours.brass
    overdue: colours.ember
    held: colours.ink
    line: colours.slate
    focus: colours.sky
    warning: colours.ember
    band: "#e0c9a1" // brass, 35 % over ground0
    bandEdge: colours.slate
    firstLine: colours.ink // brass would have only 2.5:1 to the band
    secondLine: colours.sky
    thirdLine: colours.ash
    beer: "#8a5a2b"
}
