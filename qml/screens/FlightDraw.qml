import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// A glass of a flight is drawn: caution, which barrel, into which glass, how and how much.
Column {
    id: part

    required property AppViewModel app
    readonly property FlightViewModel viewModel: part.app.flight

    spacing: Theme.gap

    Banner {
        width: parent.width
        kind: Banner.Caution
        text: part.viewModel.pouring.caution
    }
    Banner {
        objectName: "suspect"
        width: parent.width
        visible: part.viewModel.suspect
        kind: Banner.Caution
        text: qsTr("Suspect: draw it with a tap and hose of its own, and use them for no other barrel.")
    }
    Grid {
        id: which
        readonly property real share: Theme.largeText ? width : (width - spacing) / 2
        width: parent.width
        columns: Theme.largeText ? 1 : 2
        spacing: Theme.gap

        Column {
            width: which.share

            Words {
                width: parent.width
                text: qsTr("from")
                font: Theme.label
                color: Theme.colours.secondText
            }
            Words {
                objectName: "flightBarrel"
                width: parent.width
                text: part.viewModel.barrelName
                font: Theme.strongGlance
            }
            Words {
                width: parent.width
                visible: part.viewModel.barrelCode.length > 0
                text: part.viewModel.barrelCode
                font: Theme.code
                color: Theme.colours.secondText
            }
        }
        Column {
            width: which.share

            Words {
                width: parent.width
                text: part.viewModel.again ? qsTr("once more, into glass") : qsTr("into glass")
                font: Theme.label
                color: Theme.colours.secondText
            }
            Readout {
                objectName: "flightGlass"
                width: parent.width
                text: part.viewModel.glass
            }
        }
    }
    SurePad {
        width: parent.width
        leastHeight: Theme.rung
        app: part.app
        barrelId: part.viewModel.pouring.barrelId
        barrelName: part.viewModel.barrelName
    }
    Words {
        width: parent.width
        text: qsTr("Use a clean tap and glass for each; the suspect ones come last, with kit of their own.")
        color: Theme.colours.secondText
    }
    DrawForm {
        width: parent.width
        viewModel: part.viewModel.pouring
    }
    Pad {
        objectName: "leaveOut"
        width: parent.width
        visible: part.viewModel.canLeaveOut
        small: true
        text: qsTr("Leave this glass out")
        hint: qsTr("It cannot be drawn now")
        onFired: part.viewModel.leaveOut()
    }
}
