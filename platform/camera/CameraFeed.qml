import QtQuick
import QtMultimedia

// What fills the view: the live camera or a film.
Item {
    property VideoOutput videoOutput: null
    property url source // of a film
    property bool torchOn: false
    property bool torchPossible: false
    property bool zoomedIn: false
    property bool zoomPossible: false
    property bool focusPossible: false
    property bool started: true // it was asked for pictures
    property string problem // as FrameSource has it

    signal photoTaken(file: string)
    signal photoFailed()
    // The frame that is shown shall be the photo.
    signal frameWanted(folder: string)

    function takePhoto(folder: string) {
    }
    // A place of the picture, from 0, 0 at the top left to 1, 1.
    function focusOn(place: point) {
    }
}
