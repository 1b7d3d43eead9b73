import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What several devices have left for a person to decide.
Page {
    id: page

    required property AppViewModel app
    readonly property ToSettleViewModel viewModel: page.app.toSettle

    title: qsTr("To settle")
    subtitle: qsTr("Nothing is lost while nobody decides")
    backShown: true
    scroller: rows
    onBackPressed: page.app.goBack()

    ToSettleList {
        id: rows
        objectName: "rows"
        lines: page.viewModel.rows
        onChosen: index => page.viewModel.choose(index)

        // Not bound, since Qt 6.4 makes no header of a bound component.
        // qmllint disable unqualified
        header: Column {
            width: rows.width

            WaitRows {
                width: parent.width
                waiting: !page.viewModel.loaded
            }
            EmptyNote {
                objectName: "empty"
                width: parent.width
                visible: page.viewModel.empty
                text: qsTr("Nothing to settle.")
            }
        }
        // qmllint enable unqualified
    }
}
