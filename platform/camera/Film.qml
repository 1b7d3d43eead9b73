import QtQuick
import QtMultimedia

// A film that is played over and over, for demonstrations and tests.
CameraFeed {
    id: film

    required property url source
    signal photoAsked(folder: string)

    problem: player.error !== MediaPlayer.NoError ? "unreadable" : ""

    MediaPlayer {
        id: player
        source: film.source
        videoOutput: film.videoOutput
        loops: MediaPlayer.Infinite
        Component.onCompleted: player.play()
    }

    function takePhoto(folder: string) {
        film.photoAsked(folder)
    }
}
