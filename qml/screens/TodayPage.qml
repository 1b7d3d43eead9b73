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

        // Not bound, since Qt 6.4 makes no header of a bound component.
        // qmllint disable unqualified
        header: TodayPads {
            width: rows.width
            bottomPadding: Theme.gap
            app: page.app
        }
        // qmllint enable unqualified
    }
}
