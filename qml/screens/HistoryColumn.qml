import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Beside the page of a wide window: what happened to the barrel that is worked on. It hides what was scored, as
// the barrel's page does, while a sheet is open.
Page {
    id: column

    required property AppViewModel app
    readonly property BarrelViewModel viewModel: column.app.barrel

    title: column.viewModel.loaded ? column.viewModel.name : ""
    subtitle: column.viewModel.loaded ? column.viewModel.contents : ""

    Banner {
        width: parent.width
        visible: column.viewModel.scoresHidden
        kind: Banner.Note
        text: column.viewModel.openSheetText
    }
    HistoryList {
        width: parent.width
        visible: column.viewModel.loaded
        rows: column.viewModel.history
    }
}
