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
    footer: Row {
        id: row
        readonly property real small: Math.round((width - spacing) * 0.32)
        width: parent.width
        spacing: Theme.gap

        SurePad {
            id: sure
            width: row.small
            height: Math.max(implicitHeight, record.implicitHeight, Theme.main)
            brief: true
            arrangement: Pad.Stacked
            app: page.app
            barrelId: page.viewModel.barrelId
            barrelName: page.viewModel.barrelName
        }
        Pad {
            id: record
            objectName: "record"
            width: row.width - row.spacing - row.small
            height: Math.max(implicitHeight, sure.implicitHeight, Theme.main)
            act: true
            enabled: page.viewModel.canRecord
            text: qsTr("Drawn, now taste")
            onFired: page.viewModel.record()
        }
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
