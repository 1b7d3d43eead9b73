import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// One lot: how much of it there is, what can be done, and all that happened to it.
Page {
    id: page

    required property AppViewModel app
    readonly property LotViewModel viewModel: page.app.lot

    title: page.viewModel.name
    subtitle: page.viewModel.since
    backShown: true
    who: page.app.people.name.length > 0 ? page.app.people.name : qsTr("Who?")
    onBackPressed: page.app.goBack()
    onWhoPressed: page.app.navigator.open(Navigator.People)

    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded
    }
    Banner {
        objectName: "held"
        width: parent.width
        visible: page.viewModel.heldText.length > 0
        kind: Banner.Caution
        text: page.viewModel.heldText
    }
    Banner {
        objectName: "odd"
        width: parent.width
        visible: page.viewModel.oddText.length > 0
        text: page.viewModel.oddText
    }
    Column {
        width: parent.width
        visible: page.viewModel.loaded
        spacing: Theme.padding

        Fact { objectName: "left"; width: parent.width; label: qsTr("Left"); value: page.viewModel.volumeLeft; note: page.viewModel.begun ? "" : qsTr("nothing has come in yet") }
        Fact {
            objectName: "inAndOut"
            width: parent.width
            visible: page.viewModel.begun
            label: qsTr("Came in")
            value: page.viewModel.volumeIn
            note: qsTr("%1 went out").arg(page.viewModel.volumeOut)
        }
        Fact {
            objectName: "strength"
            width: parent.width
            visible: page.viewModel.strengthNote.length > 0
            label: qsTr("Strength")
            value: page.viewModel.strength
            note: page.viewModel.strengthNote
        }
        Fact {
            objectName: "allergens"
            width: parent.width
            visible: page.viewModel.allergens.length > 0
            label: qsTr("Allergens")
            value: page.viewModel.allergens
        }
    }
    LotPads {
        width: parent.width
        visible: page.viewModel.loaded
        app: page.app
    }
    PartList {
        objectName: "parts"
        width: parent.width
        rows: page.viewModel.parts
        onAct: index => page.viewModel.act(index)
        onActOther: index => page.viewModel.actOther(index)
    }
    Pad {
        objectName: "toHandbook"
        width: parent.width
        text: qsTr("Read more in the handbook")
        onFired: {
            page.app.handbook.turnTo("lots.md")
            page.app.navigator.open(Navigator.Handbook)
        }
    }
}
