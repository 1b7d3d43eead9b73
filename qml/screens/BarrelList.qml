pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Barrels as rows, read a page at a time.
ListView {
    id: list

    required property BarrelRows barrels
    signal opened(string barrelId)
    signal moreWanted()

    spacing: Theme.gap
    clip: true
    cacheBuffer: 0 // what is not seen is not made: that would double the time of a start
    boundsBehavior: Flickable.StopAtBounds
    model: list.barrels
    onAtYEndChanged: if (list.atYEnd && list.count > 0) list.moreWanted()

    delegate: ListRow {
        id: row

        required property int index
        required code
        required standing
        required property string barrelId
        required property string contents
        required property string place
        required property string reason

        objectName: "row" + row.index
        width: list.width
        firstLine: row.contents
        secondLine: row.place
        standingWord: row.reason
        onOpened: list.opened(row.barrelId)
    }
}
