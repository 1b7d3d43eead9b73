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
        onCodeRead: (text, format) => still.codeRead(text, format)
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
