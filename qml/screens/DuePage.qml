import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The barrels that have something to be done, the longest due first.
Page {
    id: page

    required property AppViewModel app
    readonly property DueViewModel viewModel: page.app.due

    title: qsTr("Due")
    subtitle: page.viewModel.loaded && !page.viewModel.empty ? page.viewModel.summary : ""
    scroller: rows
    beside: Pad {
        objectName: "allBarrels"
        width: parent.width
        visible: !page.viewModel.noBarrels
        leastHeight: Theme.rung
        small: true
        glyph: Glyph.Search
        text: qsTr("All barrels")
        onFired: page.app.allBarrels()
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

            OpenFlights {
                width: parent.width
                bottomPadding: Theme.gap
                visible: page.app.openFlights.count > 0
                viewModel: page.app.openFlights
            }
            TakeOuts {
                width: parent.width
                bottomPadding: Theme.gap
                app: page.app
            }
            WaitRows {
                width: parent.width
                waiting: !page.viewModel.loaded
            }
            EmptyNote {
                width: parent.width
                visible: page.viewModel.empty
                text: page.viewModel.noBarrels ? qsTr("No barrels yet. Register the first one.")
                                               : qsTr("Nothing is due. All barrels rest.")
                padText: page.viewModel.noBarrels ? qsTr("Register a barrel") : ""
                onActed: page.app.registerBarrel("")
            }
        }
        // qmllint enable unqualified
    }
}
