import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The summary for a duty return, what was lost, what a litre cost.
Page {
    id: page

    required property AppViewModel app
    readonly property ReportsViewModel viewModel: page.app.reports

    title: qsTr("Reports")
    backShown: true
    onBackPressed: page.app.goBack()

    Chips {
        objectName: "reports"
        width: parent.width
        mostInARow: 3
        words: page.viewModel.reports
        choice: page.viewModel.report
        onToggled: index => page.viewModel.chooseReport(index)
    }
    Chips {
        objectName: "periods"
        width: parent.width
        mostInARow: 3
        visible: page.viewModel.periods.length > 0
        words: page.viewModel.periods
        choice: page.viewModel.period
        onToggled: index => page.viewModel.choosePeriod(index)
    }
    Words {
        width: parent.width
        text: page.viewModel.note
        color: Theme.colours.secondText
    }
    Banner {
        objectName: "problem"
        width: parent.width
        visible: page.viewModel.problem.length > 0
        text: page.viewModel.problem
    }
    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded && page.viewModel.problem.length === 0
    }
    EmptyNote {
        objectName: "empty"
        width: parent.width
        visible: page.viewModel.empty
        text: qsTr("There is nothing to tell yet.")
    }
    PartList {
        objectName: "parts"
        width: parent.width
        rows: page.viewModel.parts
    }
}
