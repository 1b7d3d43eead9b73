pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The accepted glass as it is made in the tank.
Column {
    id: part

    required property BenchGlassesViewModel viewModel

    spacing: Theme.gap

    Words {
        objectName: "tankText"
        width: parent.width
        text: part.viewModel.tankText
        font: Theme.strongBody
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Repeater {
        model: part.viewModel.tank

        Fact {
            id: barrel
            required property int index
            required property string title
            required value
            required note
            objectName: "tank" + barrel.index
            width: part.width
            label: barrel.title
        }
    }
    Banner {
        width: parent.width
        kind: Banner.Caution
        text: qsTr("Before beer is moved: ease the pressure at the bung, keep flames away, air the room for carbon dioxide, and never lift a full barrel by hand. Local codes and licensed practice come first.")
    }
    TextEntry {
        objectName: "lotName"
        width: parent.width
        visible: !part.viewModel.made
        label: qsTr("Name of the lot")
        placeholder: qsTr("As it stands on the tank")
        text: part.viewModel.lotName
        onEdited: newText => part.viewModel.lotName = newText
    }
    Words {
        width: parent.width
        text: qsTr("The lot begins empty: record each barrel as it goes in.")
        color: Theme.colours.secondText
    }
}
