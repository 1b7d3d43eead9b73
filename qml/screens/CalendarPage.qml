import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// When barrels are ready: all full ones over two years.
Page {
    id: page

    required property AppViewModel app
    readonly property CalendarViewModel viewModel: page.app.calendar

    title: qsTr("When barrels are ready")
    subtitle: qsTr("By their scores; you decide")
    backShown: true
    fullWidth: true
    scroller: rows
    onBackPressed: page.app.goBack()

    CalendarList {
        id: rows
        objectName: "calendar"
        viewModel: page.viewModel
        onOpened: barrelId => page.app.openOutlookOf(barrelId)

        // Not bound, since Qt 6.4 makes no header of a bound component.
        // qmllint disable unqualified
        header: Column {
            width: rows.width
            bottomPadding: Theme.gap
            spacing: Theme.gap

            WaitRows {
                width: parent.width
                waiting: !page.viewModel.loaded || (page.viewModel.empty && page.viewModel.learning)
            }
            EmptyNote {
                width: parent.width
                visible: page.viewModel.empty && !page.viewModel.learning
                text: qsTr("No barrel is full.")
            }
            CalendarMonths {
                width: parent.width
                visible: page.viewModel.loaded && !page.viewModel.empty
                months: page.viewModel.months
                places: page.viewModel.monthPlaces
            }
        }
        // qmllint enable unqualified
    }
}
