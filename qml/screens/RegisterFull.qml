import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Of a barrel that was full before it was registered: since when about, and with what.
Column {
    id: part

    required property RegisteringViewModel viewModel

    spacing: Theme.gap

    MonthStepper {
        objectName: "since"
        width: parent.width
        label: qsTr("Full since about")
        readout: part.viewModel.since
        canLater: part.viewModel.canLater
        onStepped: months => part.viewModel.stepSince(months)
    }
    SectionTitle {
        width: parent.width
        text: qsTr("Which beer is in it?")
    }
    Chips {
        objectName: "beers"
        width: parent.width
        words: part.viewModel.beers
        choice: part.viewModel.beer
        onToggled: index => part.viewModel.beer = index
    }
    TextEntry {
        objectName: "newBeer"
        width: parent.width
        label: qsTr("Another beer")
        text: part.viewModel.newBeer
        onEdited: newText => part.viewModel.newBeer = newText
    }
}
