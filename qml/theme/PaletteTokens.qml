import QtQuick

// The colours that each palette gives, named by what they mean. (A type named Palette is in QtQuick already.)
// Text keeps 7:1 to every ground and to the band; marks keep 3:1.
QtObject {
    // Page; list row; pad that can be pressed.
    required property color ground0
    required property color ground1
    required property color ground2

    required property color text
    required property color secondText

    // Your move: the fill of the pad that comes next, and the text on it.
    required property color act
    required property color actText

    // Tints of the five states. A state is told by its cut and its word; the tint only helps.
    required property color resting
    required property color soon
    required property color due
    required property color overdue
    required property color held

    // Outlines, and lines that carry a meaning.
    required property color line
    required property color focus
    // Marks what was refused and what needs care first.
    required property color warning

    // The range of an estimate, and the lines drawn over it: the first solid, the second dashed, the third dotted.
    required property color band
    required property color bandEdge
    required property color firstLine
    required property color secondLine
    required property color thirdLine

    // Liquid in the head picture whose colour was not measured.
    required property color beer

    // Around a photo whose colour is looked at: grey of 18 % reflectance, in every palette.
    readonly property color photoSurround: "#767676"

    // A symbol that another device's camera reads from this screen, in every palette.
    readonly property color symbolInk: "#000000"
    readonly property color symbolPaper: "#ffffff"
}
