import QtQuick
import Spile.Components
import Spile.Theme

// What the camera sees, with a frame to aim by. The camera is there only while this is active.
FocusScope {
    id: finder

    property bool active: false
    // A film, picture or folder in the camera's place; empty: the camera.
    property url standIn
    property bool torchOn: false
    property bool zoomedIn: false
    property bool whole: false // shows all of the picture
    property real frameAspect: 1 // width to height of what is aimed at
    readonly property bool showsFilm: /\.(avi|mkv|mov|mp4|webm)$/i.test(String(finder.standIn))
    property url cameraFile: String(finder.standIn).length === 0 || finder.showsFilm ? "CameraFinder.qml" : "StillCamera.qml"

    readonly property bool running: finder.active && Application.state !== Qt.ApplicationSuspended
                                    && Application.state !== Qt.ApplicationHidden
    readonly property FrameSource camera: loader.item as FrameSource
    readonly property bool torchPossible: finder.camera !== null && finder.camera.torchPossible
    readonly property bool zoomPossible: finder.camera !== null && finder.camera.zoomPossible
    readonly property bool focusPossible: finder.camera !== null && finder.camera.focusPossible
    readonly property string problem: loader.status === Loader.Error ? "absent"
                                    : finder.camera === null ? "" : finder.camera.problem

    signal codesRead(camera: FrameSource)
    signal nothingRead(advice: string)
    signal photoTaken(file: string)
    signal photoFailed()

    readonly property real frameWidth: Math.min(finder.width, finder.height * finder.frameAspect) - 4 * Theme.margin

    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("The camera's picture")

    Rectangle {
        anchors.fill: parent
        color: Theme.colours.photoSurround
    }
    Loader {
        id: loader
        anchors.fill: parent
        clip: true
        active: finder.running
        source: finder.cameraFile
    }
    Binding { target: finder.camera; property: "source"; value: finder.standIn; when: finder.camera !== null }
    Binding { target: finder.camera; property: "active"; value: finder.running; when: finder.camera !== null }
    Binding { target: finder.camera; property: "torchOn"; value: finder.torchOn; when: finder.camera !== null }
    Binding { target: finder.camera; property: "zoomedIn"; value: finder.zoomedIn; when: finder.camera !== null }
    Binding { target: finder.camera; property: "whole"; value: finder.whole; when: finder.camera !== null }
    Connections {
        target: finder.camera
        function onCodesRead() {
            finder.codesRead(finder.camera)
        }
        function onNothingRead(advice: string) {
            finder.nothingRead(advice)
        }
        function onPhotoTaken(file: string) {
            finder.photoTaken(file)
        }
        function onPhotoFailed() {
            finder.photoFailed()
        }
    }
    Rectangle {
        objectName: "aim"
        anchors.centerIn: parent
        width: finder.frameWidth
        height: width / finder.frameAspect
        visible: finder.problem.length === 0
        color: "transparent"
        border { width: Theme.focusRing; color: Theme.colours.text }
        radius: Theme.corner
    }
    Rectangle {
        id: focused
        objectName: "focused"
        width: Theme.mm(12)
        height: width
        visible: focusedFor.running && finder.running
        color: "transparent"
        border { width: Theme.focusRing; color: Theme.colours.text }
        radius: width / 2

        Rectangle { // seen on any picture, light or dark
            anchors { fill: parent; margins: Theme.focusRing }
            color: "transparent"
            border { width: Theme.focusRing; color: Theme.colours.ground0 }
            radius: width / 2
        }
        Timer {
            id: focusedFor
            interval: Theme.focusShown
        }
    }
    TapHandler {
        enabled: finder.focusPossible
        onTapped: eventPoint => finder.focusAt(eventPoint.position)
    }

    function focusAt(place: point) {
        finder.camera.focusOn(Qt.point(place.x / finder.width, place.y / finder.height))
        focused.x = place.x - focused.width / 2
        focused.y = place.y - focused.height / 2
        focusedFor.restart()
    }
    function takePhoto(folder: string) {
        if (finder.camera === null) {
            finder.photoFailed()
        } else {
            finder.camera.takePhoto(folder)
        }
    }
}
