pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What is in each glass and how all scored it, side by side; one of them may be accepted.
Column {
    id: part

    required property BenchGlassesViewModel viewModel

    spacing: Theme.gap

    Words {
        width: parent.width
        text: qsTr("Choose the glass that is made in the tank; or let the next one taste first.")
        color: Theme.colours.secondText
    }
    Repeater {
        model: part.viewModel.scores

        Pad {
            id: glass
            required property int index
            required property string title
            required property string value
            required property bool picked
            objectName: "scored" + glass.index
            width: part.width
            arrangement: Pad.Stacked
            checkable: true
            chosen: glass.picked
            text: glass.title
            hint: glass.value
            onFired: part.viewModel.chooseGlass(glass.index)
        }
    }
    Column {
        width: parent.width
        visible: part.viewModel.chosen > 0
        spacing: Theme.gap

        SectionTitle {
            width: parent.width
            text: qsTr("How was %1 tasted?").arg(part.viewModel.chosenName)
        }
        Row {
            width: parent.width
            spacing: Theme.gap

            Pad {
                objectName: "cold"
                width: (parent.width - Theme.gap) / 2
                checkable: true
                chosen: part.viewModel.cold
                text: qsTr("Cold")
                onFired: part.viewModel.toggleCold()
            }
            Pad {
                objectName: "carbonated"
                width: (parent.width - Theme.gap) / 2
                checkable: true
                chosen: part.viewModel.carbonated
                text: qsTr("Carbonated")
                onFired: part.viewModel.toggleCarbonated()
            }
        }
        Pad {
            objectName: "accept"
            width: parent.width
            leastHeight: Theme.main
            act: true
            enabled: part.viewModel.canAccept
            text: qsTr("Accept")
            name: qsTr("Accept %1").arg(part.viewModel.chosenName)
            hint: part.viewModel.whyNot
            onFired: part.viewModel.accept()
        }
    }
}
