pragma Singleton
import QtQuick
import Spile.Theme

// How the app looks: every colour, size and font. Nothing is computed from them elsewhere.
QtObject {
    id: theme

    enum Palette { Dark, Light, Night }
    // Usual: a finger; Wet: drops on the screen; Low: a window lower than lowWindow; Desk: a mouse.
    enum Pads { Usual, Wet, Low, Desk }

    property int palette: Theme.Dark
    property int pads: Theme.Usual
    // What the person asked the system for; held between 1 and 2.
    property real textScale: 1
    // Logical pixels in a millimetre; set by tests only.
    property real unitsPerMm: theme.unitsOf(Screen.pixelDensity)

    readonly property PaletteTokens colours: theme.palette === Theme.Night ? theme.night
                                           : theme.palette === Theme.Light ? theme.light : theme.dark
    readonly property PaletteTokens dark: PaletteDark {}
    readonly property PaletteTokens light: PaletteLight {}
    readonly property PaletteTokens night: PaletteNight {}

    // Type, by the height of its capitals: 2.0, 2.4, 3.6, 6.6 and 11.4 mm.
    readonly property Typefaces typefaces: Typefaces {}
    readonly property font label: theme.type(theme.typefaces.semiBold, 2.8 * theme.heldTextScale)
    readonly property font body: theme.type(theme.typefaces.regular, 3.3 * theme.heldTextScale)
    readonly property font strongBody: theme.type(theme.typefaces.bold, 3.3 * theme.heldTextScale)
    readonly property font glance: theme.type(theme.typefaces.regular, 5 * theme.heldTextScale)
    readonly property font strongGlance: theme.type(theme.typefaces.bold, 5 * theme.heldTextScale)
    readonly property font code: theme.type(theme.typefaces.numerals, 5 * theme.heldTextScale)
    readonly property font smallCode: theme.type(theme.typefaces.numerals, 3.3 * theme.heldTextScale)
    readonly property font readout: theme.type(theme.typefaces.numerals, 9.3 * theme.heldTextScale)
    // Can be read from the barrel as it is, and twice the size would not fit on a phone: it does not scale.
    readonly property font timer: theme.type(theme.typefaces.numerals, 15.9)

    // Things to press: never lower than their text, of which a row has two lines.
    readonly property int rung: theme.heightFor(theme.padSizes.rung, theme.codeLine.height)
    readonly property int pad: theme.heightFor(theme.padSizes.pad, theme.codeLine.height)
    readonly property int main: theme.heightFor(theme.padSizes.main, theme.codeLine.height)
    readonly property int row: theme.heightFor(theme.padSizes.row, theme.codeLine.height + theme.bodyLine.height)
    readonly property int padWidth: theme.mm(18)

    readonly property int gap: theme.mm(theme.padSizes.gap)
    readonly property int margin: theme.mm(3)
    readonly property int padding: theme.mm(2) // between the edge of a thing and what it holds
    readonly property int tightPadding: theme.mm(0.7) // the same in keys and steppers, which hold one short word
    readonly property int keepOut: theme.mm(3) // above the bar of the system, beside its own inset
    readonly property int focusRing: theme.mm(0.66)
    readonly property int outline: theme.mm(0.33)
    readonly property int corner: theme.mm(1.5)
    readonly property int notchEdge: theme.mm(5) // width of the cut edge that shows a state
    readonly property int notch: theme.mm(2) // depth of the cut in a pad that is chosen
    readonly property int keyWidth: theme.mm(9) // the least of a key
    readonly property int hairline: theme.mm(0.17) // carries no meaning by itself
    readonly property int chartLine: theme.mm(0.5)
    readonly property int chartMark: theme.mm(2.2)
    readonly property int chartHeight: theme.mm(42)
    readonly property int headPicture: theme.mm(44)
    readonly property int glyph: theme.mm(5 * Math.min(theme.heldTextScale, 1.4))
    readonly property int lowWindow: theme.mm(125) // lower than this asks for the low pads

    // Columns, in logical pixels as the window has them: from which width on, and how wide.
    readonly property int twoColumnsFrom: 600
    readonly property int threeColumnsFrom: 1000
    readonly property int listColumn: 360
    readonly property int sheetColumn: 440
    readonly property int widestContent: 520
    readonly property bool largeText: theme.heldTextScale >= 1.5 // things that stood side by side stand below one another

    // Durations, in milliseconds.
    readonly property int lockout: 250 // in which a pad does not fire again, since a wet finger bounces
    readonly property int hold: 700
    readonly property int undo: 10000
    readonly property int blink: 180
    readonly property int focusShown: 1000 // where the camera was told to focus
    readonly property int patience: 300 // before it is shown that something is being read
    readonly property real slowestTap: 10 // seconds; a heavy glove takes more than one

    readonly property PadSizes padSizes: theme.pads === Theme.Wet ? theme.wetPads
                                       : theme.pads === Theme.Low ? theme.lowPads
                                       : theme.pads === Theme.Desk ? theme.deskPads : theme.usualPads
    readonly property PadSizes usualPads: PadSizes { rung: 13; pad: 15; main: 16; row: 14; gap: 2 }
    readonly property PadSizes wetPads: PadSizes { rung: 16; pad: 16; main: 18; row: 16; gap: 4 }
    readonly property PadSizes lowPads: PadSizes { rung: 10.5; pad: 13; main: 16; row: 14; gap: 2 }
    readonly property PadSizes deskPads: PadSizes { rung: 9; pad: 9; main: 9; row: 9; gap: 2 }

    readonly property FontMetrics codeLine: FontMetrics { font: theme.code } // the highest of those that pads carry
    readonly property FontMetrics bodyLine: FontMetrics { font: theme.body }

    readonly property real heldTextScale: theme.within(theme.textScale, 1, 2)

    // The only way from millimetres to pixels.
    function mm(millimetres: real): int {
        return Math.round(millimetres * theme.unitsPerMm)
    }
    // The height of a pad of at least `millimetres` that holds text of `textHeight` pixels.
    function heightFor(millimetres: real, textHeight: real): int {
        return Math.max(theme.mm(millimetres), Math.ceil(1.3 * textHeight))
    }
    // Phones have 5.8 to 7.0; some screens claim what cannot be, or nothing.
    function unitsOf(density: real): real {
        return density > 0 ? theme.within(density, 5.8, 7) : 6.3
    }
    function within(value: real, least: real, most: real): real {
        return Math.min(Math.max(value, least), most)
    }
    // `face` so much smaller that a word of `wordWidth` pixels fits into `room`; not smaller than can be read.
    function fitted(face: font, wordWidth: real, room: real): font {
        const wanted = wordWidth > room ? Math.floor(face.pixelSize * room / wordWidth) : face.pixelSize
        const size = Math.max(wanted, Math.min(face.pixelSize, theme.mm(2.8)))
        return Qt.font({ family: face.family, weight: face.weight, pixelSize: size })
    }
    function type(face: font, millimetres: real): font {
        return Qt.font({ family: face.family, weight: face.weight, pixelSize: theme.mm(millimetres) })
    }
}
