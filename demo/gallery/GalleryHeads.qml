import QtQuick
import Spile.Components
import Spile.Theme

Page {
    title: "Heads and colour"
    backShown: true

    Row {
        id: heads
        width: parent.width
        spacing: Theme.gap
        HeadPicture { width: (heads.width - 2 * Theme.gap) / 3; height: width; level: 0.33; liquid: "#1d0c05" }
        HeadPicture { width: (heads.width - 2 * Theme.gap) / 3; height: width; level: 0; liquid: "#c98a2e" }
        HeadPicture { width: (heads.width - 2 * Theme.gap) / 3; height: width }
    }
    PhotoFrame {
        width: parent.width
        height: Theme.mm(30)
        source: Qt.resolvedUrl("glass.png")
        description: "The sample of Tue 3 Oct in a glass"
    }
    PhotoFrame {
        width: parent.width
        height: Theme.mm(20)
        source: Qt.resolvedUrl("none.png")
        description: "A photo that is elsewhere"
    }
}
