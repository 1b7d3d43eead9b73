import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// A flight, as far as it is: glass by glass drawn, then tasted by one after the other. While it is tasted nothing on
// it says what is in a glass.
Page {
    id: page

    required property AppViewModel app
    readonly property FlightViewModel viewModel: page.app.flight
    readonly property int stage: page.viewModel.stage

    title: page.viewModel.title
    subtitle: page.stage === FlightViewModel.Reading ? "" : page.viewModel.progress
    backShown: true
    who: page.stage !== FlightViewModel.Drawing ? "" : page.app.people.name.length > 0 ? page.app.people.name : qsTr("Who?")
    onBackPressed: page.app.goBack()
    onWhoPressed: page.app.navigator.open(Navigator.People)
    footer: Pad {
        objectName: page.stage === FlightViewModel.Drawing ? "drawn"
                  : page.stage === FlightViewModel.NextGlass ? "tasteGlass" : "nextTaster"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        visible: page.stage !== FlightViewModel.Reading && page.stage !== FlightViewModel.Tasters
        act: true
        enabled: page.stage !== FlightViewModel.Drawing || page.viewModel.pouring.canRecord
        text: page.stage === FlightViewModel.Drawing ? qsTr("Drawn")
            : page.stage === FlightViewModel.NextGlass ? qsTr("Taste glass %1").arg(page.viewModel.glass)
            : qsTr("Next taster")
        onFired: page.goOn()
    }

    FlightDraw {
        width: parent.width
        visible: page.stage === FlightViewModel.Drawing
        app: page.app
    }
    FlightTasters {
        width: parent.width
        visible: page.stage === FlightViewModel.Tasters
        app: page.app
    }
    Column {
        width: parent.width
        visible: page.stage === FlightViewModel.NextGlass
        spacing: Theme.gap

        Words {
            width: parent.width
            text: qsTr("Take glass")
            font: Theme.glance
        }
        Readout {
            objectName: "nextGlass"
            width: parent.width
            text: page.viewModel.glass
        }
        Words {
            width: parent.width
            text: qsTr("Rinse your mouth with water and wait a moment first. Which barrel it is, you see after your last glass.")
            color: Theme.colours.secondText
        }
    }
    FlightRevealed {
        width: parent.width
        visible: page.stage === FlightViewModel.Tasted
        viewModel: page.viewModel
    }

    function goOn() {
        if (page.stage === FlightViewModel.Drawing) {
            page.viewModel.pouring.record()
        } else if (page.stage === FlightViewModel.NextGlass) {
            page.viewModel.taste()
        } else {
            page.viewModel.nextTaster()
        }
    }
}
