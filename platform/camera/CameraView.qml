pragma ComponentBehavior: Bound
import QtQuick
import QtMultimedia
import Spile.Camera
import Spile.Components

// The camera's picture, or a film in its place, with the codes that are read in it.
FrameSource {
    id: view

    // How long it may give no picture before that is a problem, in milliseconds.
    property int patience: 2000
    readonly property bool isFilm: String(view.source).length > 0
    readonly property CameraFeed feed: feed.item as CameraFeed

    torchPossible: view.feed !== null && view.feed.torchPossible
    zoomPossible: view.feed !== null && view.feed.zoomPossible
    problem: view.feed === null ? "" : view.feed.problem.length > 0 ? view.feed.problem
           : tap.unreadable ? "unreadable" : view.silent && !tap.running ? "busy" : ""
    property bool silent: false
    onActiveChanged: {
        view.silent = false
        tap.restart()
    }

    VideoOutput {
        id: output
        anchors.fill: parent
        fillMode: view.whole ? VideoOutput.PreserveAspectFit : VideoOutput.PreserveAspectCrop
    }
    FrameTap {
        id: tap
        sink: output.videoSink
        onRead: (text, format) => {
            if (view.active) {
                view.codeRead(text, format)
            }
        }
        onPhotoTaken: file => view.photoTaken(file)
        onPhotoFailed: view.photoFailed()
    }
    Timer {
        interval: view.patience
        running: view.feed !== null && view.feed.started && !tap.running
        onTriggered: view.silent = true
    }
    Loader {
        id: feed
        active: view.active
        sourceComponent: view.isFilm ? film : live
    }
    Component {
        id: film
        Film {
            source: view.source
            videoOutput: output
            onPhotoAsked: folder => tap.keepFrame(folder)
        }
    }
    Component {
        id: live
        LiveCamera {
            videoOutput: output
            torchOn: view.torchOn
            zoomedIn: view.zoomedIn
            onPhotoTaken: file => view.photoTaken(file)
            onPhotoFailed: view.photoFailed()
        }
    }

    function takePhoto(folder: string) {
        if (view.feed === null || view.problem.length > 0) {
            view.photoFailed()
        } else {
            view.feed.takePhoto(folder)
        }
    }
    function focusOn(place: point) {
        if (view.feed !== null) {
            view.feed.focusOn(place)
        }
    }
}
