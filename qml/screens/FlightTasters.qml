pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The glasses stand there: who tastes? The phone is passed round.
Column {
    id: part

    required property AppViewModel app
    readonly property FlightViewModel viewModel: part.app.flight

    spacing: Theme.gap

    Words {
        width: parent.width
        text: qsTr("Each taster has an order of their own. Water between two glasses; no talk until all have tasted.")
        color: Theme.colours.secondText
    }
    Repeater {
        model: part.viewModel.tasters

        Pad {
            id: taster
            required property int index
            required property string name
            required property string tasted
            required property bool finished
            objectName: "taster" + taster.index
            width: part.width
            marked: taster.finished
            glyph: taster.finished ? Glyph.Check : Glyph.Person
            text: taster.name
            hint: taster.tasted
            onFired: part.viewModel.chooseTaster(taster.index)
        }
    }
    Pad {
        objectName: "otherTaster"
        width: parent.width
        small: true
        glyph: Glyph.More
        text: qsTr("Somebody else")
        onFired: part.app.navigator.open(Navigator.People)
    }
    HoldPad {
        objectName: "endFlight"
        width: parent.width
        text: qsTr("End the flight")
        hint: qsTr("Hold: barrels and scores are shown to all")
        onHeld: part.viewModel.end()
    }
}
