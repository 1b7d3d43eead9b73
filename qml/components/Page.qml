import QtQuick
import Spile.Theme
import Spile.Components

// A page: its header, what it holds in a column that scrolls, a banner, and the pads at the thumb.
Item {
    id: page

    default property alias content: column.data
    property string title
    property string subtitle
    property bool backShown
    property string who
    property alias banner: bannerSlot.data
    property alias footer: footerSlot.data
    property alias beside: besideSlot.data // one pad beside those that page, or in their place
    property bool fullWidth // not held to the width that is good to read
    // A list that takes the place of the column; the page places it and its page pads move it.
    property Flickable scroller: flick

    signal backPressed()
    signal whoPressed()

    // What header and foot leave. If that is too little, both scroll with the column.
    readonly property real between: frame.height - header.height - Theme.padding - foot.height - Theme.gap
    readonly property bool tight: page.scroller === flick && page.between < frame.height / 3
    readonly property real room: page.tight ? frame.height : page.between
    readonly property bool overflows: page.scroller.contentHeight > page.room + 1
    readonly property Item focusItem: page.Window.activeFocusItem

    onScrollerChanged: page.place()
    Component.onCompleted: page.place()
    onFocusItemChanged: page.reveal(page.focusItem)

    Rectangle {
        anchors.fill: parent
        color: Theme.colours.ground0
    }
    Item {
        id: frame
        anchors {
            top: parent.top
            topMargin: Theme.margin
            bottom: parent.bottom
            bottomMargin: Theme.keepOut
            horizontalCenter: parent.horizontalCenter
        }
        width: Math.min(page.width - 2 * Theme.margin, page.fullWidth ? page.width : Theme.widestContent)

        PageHeader {
            id: header
            parent: page.tight ? headInside : frame
            width: frame.width
            title: page.title
            subtitle: page.subtitle
            backShown: page.backShown
            who: page.who
            onBackPressed: page.backPressed()
            onWhoPressed: page.whoPressed()
        }
        Item {
            id: viewport
            y: page.tight ? 0 : header.height + Theme.padding
            width: parent.width
            height: page.room - (paging.height > 0 ? paging.height + Theme.gap : 0)

            Flickable {
                id: flick
                objectName: "scroller"
                anchors.fill: parent
                visible: page.scroller === flick
                clip: true
                contentWidth: width
                contentHeight: all.height
                interactive: contentHeight > height
                boundsBehavior: Flickable.StopAtBounds

                Column { // header and foot come into it if they would leave too little room
                    id: all
                    width: flick.width
                    spacing: page.tight ? Theme.gap : 0
                    Item {
                        id: headInside
                        width: parent.width
                        height: page.tight ? header.height : 0
                    }
                    Column {
                        id: column
                        width: parent.width
                        spacing: Theme.gap
                    }
                    Item {
                        id: footInside
                        width: parent.width
                        height: page.tight ? foot.height : 0
                    }
                }
            }
        }
        Grid {
            id: paging
            readonly property bool given: besideSlot.children.length > 0
            readonly property bool shared: given && width >= Theme.mm(50)
            readonly property real third: (width - 2 * spacing) / 3
            y: viewport.y + viewport.height + Theme.gap
            width: parent.width
            columns: paging.shared && pagePads.visible ? 2 : 1
            spacing: Theme.gap

            PagePads {
                id: pagePads
                width: paging.shared ? 2 * paging.third + spacing : parent.width
                visible: page.overflows && page.room > 2 * height // else there is more to see without them
                scroller: page.scroller
                leastHeight: paging.shared ? besideSlot.implicitHeight : 0
            }
            Column {
                id: besideSlot
                width: paging.shared && pagePads.visible ? paging.third : parent.width
                visible: paging.given
            }
        }
        Column {
            id: foot
            parent: page.tight ? footInside : frame
            y: page.tight ? 0 : frame.height - height
            width: frame.width
            spacing: Theme.gap

            Column {
                id: bannerSlot
                width: parent.width
                spacing: Theme.gap
                visible: children.length > 0 // not by its height, which stays 0 while it is not visible
            }
            Column {
                id: footerSlot
                width: parent.width
                spacing: Theme.gap
                visible: children.length > 0 // not by its height, which stays 0 while it is not visible
            }
        }
    }

    function place() {
        if (page.scroller !== flick) {
            page.scroller.parent = viewport
            page.scroller.anchors.fill = viewport
        }
    }
    function reveal(item: Item) {
        let ancestor = item
        while (ancestor && ancestor !== page.scroller.contentItem) {
            ancestor = ancestor.parent
        }
        if (ancestor) {
            const top = item.mapToItem(ancestor, 0, 0).y
            pagePads.reveal(top, top + item.height)
        }
    }
}
