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
    focusPossible: view.feed !== null && view.feed.focusPossible
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
        onRead: (texts, formats) => {
            if (view.active) {
                view.texts = texts
                view.formats = formats
                view.codesRead()
            }
        }
        onNothing: advice => {
            if (view.active) {
                view.nothingRead(advice)
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
    // Files, not components within this one: Qt 6.4 refuses to make those of a type that is extended.
    Loader {
        id: feed
        active: view.active
        source: view.isFilm ? "Film.qml" : "LiveCamera.qml"
    }
    Binding { target: view.feed; property: "videoOutput"; value: output; when: view.feed !== null }
    Binding { target: view.feed; property: "source"; value: view.source; when: view.feed !== null }
    Binding { target: view.feed; property: "torchOn"; value: view.torchOn; when: view.feed !== null }
    Binding { target: view.feed; property: "zoomedIn"; value: view.zoomedIn; when: view.feed !== null }
    Connections {
        target: view.feed
        function onPhotoTaken(file: string) {
            view.photoTaken(file)
        }
        function onPhotoFailed() {
            view.photoFailed()
        }
        function onFrameWanted(folder: string) {
            tap.keepFrame(folder)
        }
    }

    function takePhoto(folder: string) {
        if (view.feed === null || view.problem.length > 0) {
            view.photoFailed()
        } else {
            view.feed.takePhoto(folder)
        }
    }
    // The picture fills more than this item, or less.
    function focusOn(place: point) {
        if (view.feed !== null) {
            const shown = output.contentRect
            view.feed.focusOn(Qt.point((place.x * view.width - shown.x) / shown.width,
                                       (place.y * view.height - shown.y) / shown.height))
        }
    }
}
