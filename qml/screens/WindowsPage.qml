pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What the beer of this barrel should taste like. It is recorded when the page is left.
Page {
    id: page

    required property AppViewModel app
    readonly property WindowsViewModel viewModel: page.app.windows

    title: qsTr("What this beer should taste like")
    subtitle: page.viewModel.beer
    backShown: true
    onBackPressed: page.app.goBack()
    footer: Pad {
        objectName: "done"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        text: qsTr("Done")
        onFired: page.app.goBack()
    }

    Words {
        width: parent.width
        text: qsTr("A window is the range on the ladder, 1 to 9, in which you would take it out. It holds for all barrels of this beer.")
        color: Theme.colours.secondText
    }
    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded
    }
    Banner {
        width: parent.width
        visible: page.viewModel.loaded && !page.viewModel.known
        kind: Banner.Note
        text: qsTr("Nobody has said which beer this barrel holds, so it has no windows. Say it with its next fill.")
    }
    Repeater {
        model: page.viewModel.known ? page.viewModel.windows : null

        WindowSteps {
            id: line
            width: parent.width
            onToggled: page.viewModel.toggle(line.index)
            onLowStepped: by => page.viewModel.stepLow(line.index, by)
            onHighStepped: by => page.viewModel.stepHigh(line.index, by)
        }
    }
}
