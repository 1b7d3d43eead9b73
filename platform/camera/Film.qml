import QtQuick
import QtMultimedia

// A film that is played over and over, for demonstrations and tests.
CameraFeed {
    id: film

    problem: player.error !== MediaPlayer.NoError ? "unreadable" : ""

    MediaPlayer {
        id: player
        source: film.source
        videoOutput: film.videoOutput
        loops: MediaPlayer.Infinite
        // Not when the source is set: a player asked that early never shows a frame.
        onMediaStatusChanged: {
            if (player.mediaStatus === MediaPlayer.LoadedMedia) {
                player.play()
            }
        }
    }

    function takePhoto(folder: string) {
        film.frameWanted(folder)
    }
}
