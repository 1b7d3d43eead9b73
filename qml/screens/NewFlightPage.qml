import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Which barrels are drawn to be tasted together, or which flight is gone on with.
Page {
    id: page

    required property AppViewModel app
    readonly property NewFlightViewModel viewModel: page.app.newFlight

    title: qsTr("Flight")
    subtitle: qsTr("Which barrels are tasted together, blind?")
    backShown: true
    who: page.app.people.name.length > 0 ? page.app.people.name : qsTr("Who?")
    scroller: rows
    onBackPressed: page.app.goBack()
    onWhoPressed: page.app.navigator.open(Navigator.People)
    beside: Pad {
        objectName: "twice"
        width: parent.width
        leastHeight: Theme.rung
        small: true
        checkable: true
        enabled: page.viewModel.canTwice
        chosen: page.viewModel.twice
        text: qsTr("Pour one twice")
        name: qsTr("Pour a clean barrel into two glasses, to see how well you repeat")
        onFired: page.viewModel.toggleTwice()
    }
    footer: Pad {
        objectName: "begin"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        enabled: page.viewModel.canBegin
        text: page.viewModel.beginText
        onFired: page.viewModel.begin()
    }

    FlightBarrels {
        id: rows
        objectName: "rows"
        viewModel: page.viewModel

        // Not bound, since Qt 6.4 makes no header of a bound component.
        // qmllint disable unqualified
        header: Column {
            width: rows.width
            spacing: Theme.gap
            bottomPadding: Theme.gap

            OpenFlights {
                width: parent.width
                visible: page.app.openFlights.count > 0
                viewModel: page.app.openFlights
            }
            Banner {
                width: parent.width
                visible: page.viewModel.error.length > 0
                kind: Banner.Refused
                text: page.viewModel.error
            }
            TextEntry {
                objectName: "search"
                width: parent.width
                visible: page.viewModel.many
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
                visible: page.viewModel.loaded && rows.count === 0
                text: page.viewModel.search.length > 0 ? qsTr("No full barrel is like that.")
                                                       : qsTr("No barrel is full.")
            }
        }
        // qmllint enable unqualified
    }
}
