import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// All barrels: what is typed is looked for in all that is seen of them.
Page {
    id: page

    required property AppViewModel app
    readonly property BarrelsViewModel viewModel: page.app.barrels

    title: qsTr("All barrels")
    backShown: true
    scroller: rows
    onBackPressed: page.app.goBack()
    beside: Pad {
        objectName: "register"
        width: parent.width
        leastHeight: Theme.rung
        small: true
        glyph: Glyph.More
        text: qsTr("Register")
        name: qsTr("Register a barrel")
        onFired: page.app.registerBarrel("")
    }

    BarrelList {
        id: rows
        objectName: "rows"
        barrels: page.viewModel.barrels
        onOpened: barrelId => page.app.openBarrel(barrelId)
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
            Chips {
                objectName: "filters"
                width: parent.width
                mostInARow: 3
                words: page.viewModel.filters
                choice: page.viewModel.filter
                onToggled: index => page.viewModel.filter = index
            }
            WaitRows {
                width: parent.width
                waiting: !page.viewModel.loaded
            }
            EmptyNote {
                width: parent.width
                visible: page.viewModel.empty
                text: qsTr("No barrel is like that.")
                padText: qsTr("Show all")
                onActed: {
                    page.viewModel.search = ""
                    page.viewModel.filter = 0
                }
            }
        }
        // qmllint enable unqualified
    }
}
