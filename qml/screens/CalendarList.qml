pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.ViewModels

// The full barrels by when they are best.
LongList {
    id: list

    required property CalendarViewModel viewModel
    signal opened(string barrelId)

    model: list.viewModel.barrels
    onMoreWanted: list.viewModel.more()

    delegate: SpanRow {
        id: row

        required property int index
        required property string barrelId
        required from
        required to
        required mark

        objectName: "foreseen" + row.index
        width: list.width
        now: list.viewModel.now
        places: list.viewModel.monthPlaces
        onOpened: list.opened(row.barrelId)
    }
}
