import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What the tasters are like, each beside the others, and how far they agree.
Page {
    id: page

    required property AppViewModel app
    readonly property TastersViewModel viewModel: page.app.tasters

    title: qsTr("How we taste")
    subtitle: qsTr("Each beside the others; it is no contest")
    backShown: true
    onBackPressed: page.app.goBack()

    Banner {
        objectName: "problem"
        width: parent.width
        visible: page.viewModel.problem.length > 0
        text: page.viewModel.problem
    }
    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded && page.viewModel.problem.length === 0
    }
    EmptyNote {
        objectName: "nobody"
        width: parent.width
        visible: page.viewModel.empty
        text: qsTr("Nobody has scored yet.")
    }
    TasterLines {
        width: parent.width
        rows: page.viewModel.tasters
        title: qsTr("Tasters")
        lineName: "taster"
    }
    TasterLines {
        width: parent.width
        rows: page.viewModel.attributes
        title: qsTr("How far the tasters agree")
        lineName: "attribute"
    }
    Pad {
        objectName: "toHandbook"
        width: parent.width
        text: qsTr("Read more in the handbook")
        onFired: {
            page.app.handbook.turnTo("tasters.md")
            page.app.navigator.open(Navigator.Handbook)
        }
    }
}
