pragma ComponentBehavior: Bound
import QtQuick
import Spile.Screens
import Spile.ViewModels

// What was recorded on this device, the newest first.
LongList {
    id: list

    required property TodayViewModel viewModel

    model: list.viewModel.journal
    onMoreWanted: list.viewModel.more()

    delegate: JournalRow {
        width: list.width
        onTakenBack: list.viewModel.takeBackAt(index)
    }
}
