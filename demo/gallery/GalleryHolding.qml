import QtQuick
import Spile.Components
import Spile.Theme

Page {
    title: "Held, not tapped"
    backShown: true

    HoldPad { objectName: "hold"; width: parent.width; text: "Empty this barrel" }
    HoldPad {
        width: parent.width
        text: "Throw this sheet away"
        hint: "Hold to do it: it cannot be taken back"
        progress: 0.4
    }
    HoldPad { width: parent.width; enabled: false; text: "Hand the cellar over"; hint: "Only its owner can" }
    SectionTitle { width: parent.width; text: "Lists that are not there yet" }
    EmptyNote { width: parent.width; text: "No barrels yet. Scan the first head."; padText: "Scan" }
    WaitRows { width: parent.width; late: true; count: 2 }
}
