pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.ViewModels

// Barrels as rows.
LongList {
    id: list

    required property BarrelRows barrels
    signal opened(string barrelId)

    model: list.barrels

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
