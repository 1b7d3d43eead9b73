import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Where beer came from and where it went, and the recall list of it.
Page {
    id: page

    required property AppViewModel app
    readonly property TraceViewModel viewModel: page.app.trace
    readonly property bool written: page.viewModel.fileName.length > 0

    title: page.viewModel.name.length > 0 ? page.viewModel.name : qsTr("Trace")
    subtitle: page.viewModel.summary
    backShown: true
    onBackPressed: page.app.goBack()
    footer: Pad {
        objectName: "recall"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        visible: page.viewModel.name.length > 0
        act: !page.written
        enabled: page.viewModel.canRecall
        text: page.written ? qsTr("Write it anew") : qsTr("Recall list")
        hint: page.written ? "" : qsTr("All packages of it, and who has them")
        onFired: page.viewModel.recall()
    }

    TextEntry {
        objectName: "typed"
        width: parent.width
        label: qsTr("What do you want to trace?")
        placeholder: qsTr("A lot code, lot, barrel, beer, or what was put in")
        text: page.viewModel.typed
        onEdited: newText => page.viewModel.typed = newText
        onDone: page.viewModel.search()
    }
    Pad {
        objectName: "search"
        width: parent.width
        visible: page.viewModel.typed.length > 0
        act: page.viewModel.name.length === 0
        text: qsTr("Look for it")
        onFired: page.viewModel.search()
    }
    Banner {
        objectName: "error"
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    Column {
        width: parent.width
        spacing: Theme.gap
        visible: page.written

        Banner {
            objectName: "done"
            width: parent.width
            text: qsTr("The recall list is written: a text that can be printed or sent.")
        }
        Words { objectName: "file"; width: parent.width; text: page.viewModel.fileName; wrapMode: Text.WrapAnywhere; font: Theme.strongBody }
        Words { objectName: "recallText"; width: parent.width; text: page.viewModel.recallText }
    }
    SectionTitle {
        width: parent.width
        visible: page.viewModel.canRecall && page.viewModel.folders.length > 1
        text: qsTr("Where is the recall list put?")
    }
    Chips {
        objectName: "folders"
        width: parent.width
        visible: page.viewModel.canRecall && page.viewModel.folders.length > 1
        words: page.viewModel.folders
        choice: page.viewModel.folder
        onToggled: index => page.viewModel.chooseFolder(index)
    }
    Chips {
        objectName: "others"
        width: parent.width
        visible: page.viewModel.others.length > 0
        words: page.viewModel.others
        choice: page.viewModel.other
        onToggled: index => page.viewModel.chooseOther(index)
    }
    Chips {
        objectName: "ways"
        width: parent.width
        visible: page.viewModel.ways.length > 1
        words: page.viewModel.ways
        choice: page.viewModel.way
        onToggled: index => page.viewModel.chooseWay(index)
    }
    WaitRows {
        width: parent.width
        waiting: page.viewModel.running
    }
    PartList {
        objectName: "parts"
        width: parent.width
        rows: page.viewModel.parts
        onAct: index => page.viewModel.act(index)
    }
    Pad {
        objectName: "toHandbook"
        width: parent.width
        text: qsTr("Read more in the handbook")
        onFired: {
            page.app.handbook.turnTo("trace.md")
            page.app.navigator.open(Navigator.Handbook)
        }
    }
}
