import QtQuick
import QtMultimedia

// What fills the view: the live camera or a film.
Item {
    required property VideoOutput videoOutput
    property bool torchPossible: false
    property bool zoomPossible: false
    property bool started: true // it was asked for pictures
    property string problem // as FrameSource has it

    function takePhoto(folder: string) {
    }
    function focusOn(place: point) {
    }
}
