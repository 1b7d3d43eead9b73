import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What was recorded here, what is still open, and the way to the day file.
Page {
    id: page

    required property AppViewModel app
    readonly property TodayViewModel viewModel: page.app.today

    title: qsTr("Today")
    subtitle: page.viewModel.day
    scroller: rows

    JournalList {
        id: rows
        objectName: "journal"
        viewModel: page.viewModel

        // Not in the list's own file: Qt 6.4 makes no header there, since its delegate is bound.
        header: TodayPads {
            width: rows.width
            bottomPadding: Theme.gap
            app: page.app
        }
    }
}
