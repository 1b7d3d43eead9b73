import QtQuick
import Spile.Components
import Spile.Gallery
import Spile.Theme

// Every component with invented data, a page at a time.
Item {
    id: gallery

    property int page
    property int palette: Theme.Dark
    property real textScale: 1
    property bool mirrored
    property int pads: gallery.width >= Theme.threeColumnsFrom ? Theme.Desk
                     : gallery.height < Theme.lowWindow ? Theme.Low : Theme.Usual
    property bool barShown: true // to walk through the pages by hand
    readonly property list<string> pages: ["Pads", "Holding", "Score", "Rows", "Bars", "Numbers", "Code", "Digits",
        "Words", "Chips", "Banners", "Barrel", "Heads", "Chart", "Courses", "Steps", "Glyphs", "Spans"]

    LayoutMirroring.enabled: gallery.mirrored
    LayoutMirroring.childrenInherit: true

    Binding { target: Theme; property: "palette"; value: gallery.palette }
    Binding { target: Theme; property: "textScale"; value: gallery.textScale }
    Binding { target: Theme; property: "pads"; value: gallery.pads }
    Loader {
        id: shown
        objectName: "shown"
        width: parent.width
        height: parent.height - (bar.visible ? bar.height : 0)
        source: "Gallery" + gallery.pages[gallery.page] + ".qml"
    }
    PadBar {
        id: bar
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        visible: gallery.barShown
        labels: ["Before", "Colours", "Next"]
        glyphs: [Glyph.Back, Glyph.Check, Glyph.Next]
        onChosen: index => gallery.walk(index)
    }

    function walk(index: int) {
        if (index === 1) {
            gallery.palette = (gallery.palette + 1) % 3
        } else {
            gallery.page = (gallery.page + (index === 0 ? gallery.pages.length - 1 : 1)) % gallery.pages.length
        }
    }
}
