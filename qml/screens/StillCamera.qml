import QtQuick
import Spile.Components
import Spile.ViewModels

// Pictures in the camera's place.
FrameSource {
    id: still

    problem: frames.problem

    StillFrames {
        id: frames
        source: still.source
        active: still.active
        onCodesRead: (texts, formats) => {
            still.texts = texts
            still.formats = formats
            still.codesRead()
        }
        onNothingRead: advice => still.nothingRead(advice)
        onPhotoTaken: file => still.photoTaken(file)
        onPhotoFailed: still.photoFailed()
    }
    Image {
        anchors.fill: parent
        source: frames.current
        fillMode: still.whole ? Image.PreserveAspectFit : Image.PreserveAspectCrop
        autoTransform: true
        sourceSize.width: 1920
    }

    function takePhoto(folder: string) {
        frames.takePhoto(folder)
    }
}
