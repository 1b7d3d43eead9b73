import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// A sample is drawn: how, how much, by whom.
Page {
    id: page

    required property AppViewModel app
    readonly property DrawingViewModel viewModel: page.app.drawing

    title: qsTr("Draw from %1").arg(page.viewModel.barrelName)
    subtitle: page.viewModel.contents
    backShown: true
    who: page.app.people.name.length > 0 ? page.app.people.name : qsTr("Who?")
    onBackPressed: page.app.goBack()
    onWhoPressed: page.app.navigator.open(Navigator.People)
    footer: Pad {
        objectName: "record"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        enabled: page.viewModel.canRecord
        text: qsTr("Drawn, now taste")
        onFired: page.viewModel.record()
    }

    Banner {
        width: parent.width
        kind: Banner.Caution
        text: page.viewModel.caution
    }
    DrawForm {
        width: parent.width
        viewModel: page.viewModel
    }
}
