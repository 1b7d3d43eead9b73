pragma ComponentBehavior: Bound
import QtQuick
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What was recorded on this device, the newest first.
ListView {
    id: list

    required property TodayViewModel viewModel

    clip: true
    spacing: Theme.gap
    boundsBehavior: Flickable.StopAtBounds
    model: list.viewModel.journal
    onAtYEndChanged: if (list.atYEnd && list.count > 0) list.viewModel.more()

    delegate: JournalRow {
        width: list.width
        onTakenBack: list.viewModel.takeBackAt(index)
    }
}
