import QtQuick
import QtMultimedia
import Spile.Camera

// The camera at the back of this device, or whichever it has.
CameraFeed {
    id: live

    readonly property bool there: devices.videoInputs.length > 0

    torchPossible: camera.active && camera.isTorchModeSupported(Camera.TorchOn)
    zoomPossible: camera.active && camera.maximumZoomFactor > camera.minimumZoomFactor
    focusPossible: camera.active && access.focusesWhereTold(camera)
    started: camera.active
    problem: !live.there ? "absent" : access.denied ? "denied" : camera.error === Camera.NoError ? ""
           : access.failureIsDenial ? "denied" : "busy"
    Component.onCompleted: access.ask()

    MediaDevices {
        id: devices
    }
    CameraAccess {
        id: access
    }
    CaptureSession {
        videoOutput: live.videoOutput
        camera: Camera {
            id: camera
            active: live.there && access.granted
            focusMode: Camera.FocusModeAutoNear
            torchMode: live.torchOn && live.torchPossible ? Camera.TorchOn : Camera.TorchOff
            zoomFactor: live.zoomedIn && live.zoomPossible ? Math.min(2, camera.maximumZoomFactor) : 1
        }
        imageCapture: ImageCapture {
            id: shutter
            onImageSaved: (id, fileName) => live.photoTaken(fileName)
            onErrorOccurred: live.photoFailed()
        }
    }

    function takePhoto(folder: string) {
        if (shutter.readyForCapture) {
            shutter.captureToFile(folder) // a folder: Qt finds a new name in it
        } else {
            live.photoFailed()
        }
    }
    function focusOn(place: point) {
        camera.customFocusPoint = place
    }
}
