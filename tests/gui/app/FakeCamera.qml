import QtQuick
import Spile.Components

// A camera that a test works: it says what is wrong, "reads" and "takes" what it is told to.
FrameSource {
    id: fake

    property string photo // what takePhoto() gives; empty: it fails
    property int photosAsked: 0
    property point focusedOn
    torchPossible: true
    zoomPossible: true
    focusPossible: true

    function takePhoto(folder: string) {
        ++fake.photosAsked
        if (fake.photo.length > 0) {
            fake.photoTaken(fake.photo)
        } else {
            fake.photoFailed()
        }
    }
    function focusOn(place: point) {
        fake.focusedOn = place
    }
}
