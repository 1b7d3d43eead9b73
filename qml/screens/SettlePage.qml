pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// One thing that is to be settled: what it means, and a pad for each way to settle it.
Page {
    id: page

    required property AppViewModel app
    readonly property SettleViewModel viewModel: page.app.settle
    readonly property bool busy: page.viewModel.progress >= 0

    title: page.viewModel.about
    subtitle: page.viewModel.what
    backShown: true
    onBackPressed: page.app.goBack()
    banner: Banner { // in sight wherever the page is scrolled to
        objectName: "error"
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }

    Words {
        width: parent.width
        visible: page.viewModel.who.length > 0
        text: page.viewModel.who
        color: Theme.colours.secondText
    }
    Words {
        objectName: "consequence"
        width: parent.width
        visible: !page.viewModel.gone
        text: page.viewModel.consequence
    }
    Banner {
        objectName: "missing"
        width: parent.width
        visible: page.viewModel.missing.length > 0
        text: page.viewModel.missing
    }
    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded
    }
    EmptyNote {
        objectName: "gone"
        width: parent.width
        visible: page.viewModel.gone
        text: qsTr("This is settled by now.")
    }
    TextEntry {
        objectName: "deviceName"
        width: parent.width
        visible: page.viewModel.asksName
        label: qsTr("What it is called")
        text: page.viewModel.name
        onEdited: newText => page.viewModel.name = newText
    }
    Repeater {
        model: page.viewModel.choices

        Pad {
            id: choice

            required property string modelData
            required property int index

            objectName: "choice" + choice.index
            width: parent.width
            enabled: page.viewModel.missing.length === 0
            text: choice.modelData
            hint: page.viewModel.hints[choice.index] ?? ""
            onFired: page.viewModel.choose(choice.index)
        }
    }
    Progress {
        objectName: "progress"
        width: parent.width
        visible: page.busy
        value: page.viewModel.progress
        text: qsTr("They are let count")
    }
    Pad {
        objectName: "stop"
        width: parent.width
        visible: page.busy
        text: qsTr("Stop")
        hint: qsTr("Those that count already stay so")
        onFired: page.viewModel.stop()
    }
    Pad {
        objectName: "all"
        width: parent.width
        visible: page.viewModel.allText.length > 0 && !page.busy
        enabled: page.viewModel.missing.length === 0
        act: true
        text: page.viewModel.allText
        onFired: page.viewModel.letAllCount()
    }
}
