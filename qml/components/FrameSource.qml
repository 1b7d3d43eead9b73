import QtQuick

// What every camera of the app is to the pages: the live one, a film, or still pictures in its place.
// Frames are looked at while `active`; nothing of the camera is held otherwise.
Item {
    property bool active: false
    // A film, picture or folder in the camera's place.
    property url source
    property bool whole: false // shows all of the picture; else it fills this item
    property bool torchOn: false
    property bool torchPossible: false
    property bool zoomedIn: false
    property bool zoomPossible: false
    // "": none; "absent": there is no camera; "denied": the person or system does not allow it;
    // "busy": it gives no pictures; "unreadable": pictures come that this app cannot read.
    property string problem

    // A code in a frame, each time it is read; see FrameReader for `format`.
    signal codeRead(text: string, format: string)
    // A photo lies in `file`, for whoever asked to take away.
    signal photoTaken(file: string)
    signal photoFailed()

    // Answers with photoTaken or photoFailed.
    function takePhoto(folder: string) {
    }
    // A place from 0, 0 at the top left to 1, 1.
    function focusOn(place: point) {
    }
}
