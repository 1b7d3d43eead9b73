import QtQml

// Heights of the things to press and the gap between them, in millimetres.
QtObject {
    required property real rung // of a scale; also a pad in a list
    required property real pad // nudge, undo, next, steppers
    required property real main // scan, step done, hold
    required property real row // of a list
    required property real gap
}
