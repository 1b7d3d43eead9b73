import QtQuick
import Spile.Components
import Spile.Theme

Page {
    title: "Purge with CO₂"
    subtitle: "Step 2 of 6"
    backShown: true
    footer: Pad {
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        glyph: Glyph.Check
        text: "Done, next step"
    }

    Words {
        width: parent.width
        font: Theme.glance
        text: "Open the gas at 0.3 bar into the bunghole. Keep the hose at the bottom."
    }
    TimerFace { width: parent.width; text: "04:12"; caption: "until the air is out" }
    TimerFace { width: parent.width; text: "00:00"; caption: "Time is up, 2:10 over"; overdue: true }
    TimerFace { width: parent.width; text: "11:08:44"; caption: "since it was sealed" }
}
