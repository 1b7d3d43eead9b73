import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// A device's clock was wrong: the right time is said on it, or what it shows is said beside a right one.
Page {
    id: page

    required property AppViewModel app
    readonly property ClockViewModel viewModel: page.app.clock

    title: qsTr("Clock")
    subtitle: page.viewModel.own ? qsTr("%1, this device").arg(page.viewModel.name) : page.viewModel.name
    backShown: true
    onBackPressed: page.app.goBack()
    banner: Banner { // in sight wherever the page is scrolled to
        objectName: "error"
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    footer: Pad {
        objectName: "save"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        visible: page.viewModel.loaded && (page.viewModel.own || page.viewModel.newest.length > 0)
        act: true
        text: page.viewModel.own ? qsTr("This is the right time") : qsTr("It shows this time")
        hint: page.viewModel.said
        onFired: page.viewModel.save()
    }

    Banner {
        objectName: "known"
        width: parent.width
        visible: page.viewModel.known.length > 0
        text: page.viewModel.known
        padText: qsTr("Take back")
        onActed: page.viewModel.takeBack()
    }
    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded
    }
    Fact {
        objectName: "newest"
        width: parent.width
        visible: page.viewModel.newest.length > 0
        label: qsTr("Newest record")
        value: page.viewModel.newest
        note: qsTr("by its clock")
    }
    Banner {
        objectName: "none"
        width: parent.width
        visible: page.viewModel.loaded && !page.viewModel.own && page.viewModel.newest.length === 0
        text: qsTr("No record of it is here. Take in a day file from it first.")
    }
    Banner {
        objectName: "consequence"
        width: parent.width
        text: page.viewModel.own
              ? qsTr("If this device's clock was wrong, say what the time is now. What was recorded on it since it was started gets its true time; the records stay as they are.")
              : qsTr("If its clock is wrong, say what it shows now; this device's clock must be right. What it recorded since it was started gets its true time.")
    }
    ClockSteps {
        width: parent.width
        visible: page.viewModel.loaded && (page.viewModel.own || page.viewModel.newest.length > 0)
        viewModel: page.viewModel
    }
}
