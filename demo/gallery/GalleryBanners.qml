import QtQuick
import Spile.Components
import Spile.Theme

Page {
    title: "Said beforehand"
    banner: Banner {
        width: parent.width
        kind: Banner.Caution
        text: "Screen wet? Wipe it, or use the volume keys."
        padText: "I wiped it"
    }

    Banner {
        width: parent.width
        kind: Banner.Caution
        text: "Carbon dioxide gathers low in closed rooms and kills. Measure the air first."
    }
    Banner {
        width: parent.width
        kind: Banner.Refused
        text: "The photo is not kept: the storage is full. Scores are kept."
        padText: "Free space"
    }
    Banner { width: parent.width; text: "Battery 12 %. All is kept." }
}
