import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What can also be known of a barrel; shown when it is asked for.
Column {
    id: part

    required property RegisteringViewModel viewModel
    property bool opened: false

    spacing: Theme.gap

    Pad {
        objectName: "more"
        width: parent.width
        checkable: true
        text: part.opened ? qsTr("Less") : qsTr("Place, wood, fills before")
        onFired: part.opened = !part.opened
    }
    SectionTitle { width: parent.width; visible: part.opened; text: qsTr("Where does it lie?") }
    Chips {
        objectName: "places"
        width: parent.width
        visible: part.opened && part.viewModel.places.length > 0
        words: part.viewModel.places
        choice: part.viewModel.place
        onToggled: index => part.viewModel.place = index
    }
    TextEntry {
        objectName: "newPlace"
        width: parent.width
        visible: part.opened
        label: qsTr("Another place")
        placeholder: qsTr("Rack 2")
        text: part.viewModel.newPlace
        onEdited: newText => part.viewModel.newPlace = newText
    }
    SectionTitle { width: parent.width; visible: part.opened; text: qsTr("Which wood?") }
    Chips {
        objectName: "woods"
        width: parent.width
        visible: part.opened
        words: part.viewModel.woods
        choice: part.viewModel.wood
        onToggled: index => part.viewModel.wood = index
    }
    SectionTitle { width: parent.width; visible: part.opened; text: qsTr("How many beers did it hold before?") }
    Chips {
        objectName: "fills"
        width: parent.width
        visible: part.opened
        words: part.viewModel.fillsBefore
        choice: part.viewModel.fills
        onToggled: index => part.viewModel.fills = index
    }
}
