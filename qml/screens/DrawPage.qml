import QtQuick
import Spile.Components
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
    Banner {
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    SectionTitle { width: parent.width; text: qsTr("Where is it drawn?") }
    Chips {
        objectName: "methods"
        width: parent.width
        mostInARow: 3
        words: page.viewModel.methods
        choice: page.viewModel.method
        onToggled: index => page.viewModel.method = index
    }
    Stepper {
        objectName: "volume"
        width: parent.width
        label: qsTr("How much?")
        readout: page.viewModel.volume
        smallStep: page.viewModel.smallStep
        bigStep: page.viewModel.bigStep
        canLess: page.viewModel.canLess
        onStepped: count => page.viewModel.step(count)
    }
}
