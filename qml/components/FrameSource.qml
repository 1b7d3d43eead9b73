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
    property bool focusPossible: false
    // "": none; "absent": there is no camera; "denied": the person or system does not allow it;
    // "busy": it gives no pictures; "unreadable": pictures come that this app cannot read.
    property string problem

    // The codes of the last frame that held any, that nearest the middle first; see FrameReader. (A signal of Qt 6.4
    // carries no list.)
    property list<string> texts
    property list<string> formats

    signal codesRead()
    // A frame held no code, and this would help.
    signal nothingRead(advice: string)
    // A photo lies in `file`, for whoever asked to take away.
    signal photoTaken(file: string)
    signal photoFailed()

    // Answers with photoTaken or photoFailed.
    function takePhoto(folder: string) {
    }
    // A place of this item, from 0, 0 at the top left to 1, 1.
    function focusOn(place: point) {
    }
}
