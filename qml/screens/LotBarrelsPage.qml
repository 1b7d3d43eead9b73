import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Which full barrel comes into the lot?
Page {
    id: page

    required property AppViewModel app
    readonly property BarrelsViewModel viewModel: page.app.lotBarrels

    title: qsTr("Take in a barrel")
    subtitle: page.app.lot.name
    backShown: true
    scroller: rows
    onBackPressed: page.app.goBack()

    BarrelList {
        id: rows
        objectName: "rows"
        barrels: page.viewModel.barrels
        onOpened: barrelId => page.app.emptyBarrel(barrelId)
        onMoreWanted: page.viewModel.more()

        // Not bound, since Qt 6.4 makes no header of a bound component.
        // qmllint disable unqualified
        header: Column {
            width: rows.width
            spacing: Theme.gap
            bottomPadding: Theme.gap

            TextEntry {
                objectName: "search"
                width: parent.width
                label: qsTr("Search")
                placeholder: qsTr("Mark, code, beer, spirit or place")
                text: page.viewModel.search
                onEdited: newText => page.viewModel.search = newText
            }
            WaitRows {
                width: parent.width
                waiting: !page.viewModel.loaded
            }
            EmptyNote {
                width: parent.width
                visible: page.viewModel.empty
                text: qsTr("No full barrel is like that.")
            }
        }
        // qmllint enable unqualified
    }
}
