import QtQuick
import Spile.Theme

// A list that may be long: what is seen of it is made, more is asked for at its end, and while it is at its beginning it
// stays there, whatever comes above the first row.
ListView {
    id: list

    property real beginning: 0
    signal moreWanted()

    spacing: Theme.gap
    clip: true
    cacheBuffer: 0 // half the rows at a start
    boundsBehavior: Flickable.StopAtBounds
    onAtYEndChanged: if (list.atYEnd && list.count > 0) list.moreWanted()
    onOriginYChanged: {
        const wasThere = list.contentY <= list.beginning + 1
        list.beginning = list.originY
        if (wasThere) {
            Qt.callLater(list.toBeginning)
        }
    }

    // Called later: a list that is moved while it lays out its rows, below a header that leaves none in sight, lays them
    // out without end.
    function toBeginning() {
        if (!list.moving) {
            list.positionViewAtBeginning()
        }
    }
}
