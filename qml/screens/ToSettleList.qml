pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.ViewModels

// What is to be settled, as rows.
LongList {
    id: list

    required property ToSettleRows lines
    signal chosen(int index)

    model: list.lines

    delegate: ListRow {
        id: row

        required property int index
        required property string about
        required property string what
        required property string who

        objectName: "row" + row.index
        width: list.width
        title: row.about
        firstLine: row.what
        secondLine: row.who
        showEdge: false
        onOpened: list.chosen(row.index)
    }
}
