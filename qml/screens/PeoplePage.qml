pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Who holds the phone?
Page {
    id: page

    required property AppViewModel app
    readonly property PeopleViewModel viewModel: page.app.people

    title: qsTr("Who are you?")
    subtitle: qsTr("What you record next is yours")
    backShown: true
    onBackPressed: page.app.goBack()
    footer: Pad {
        objectName: "addPerson"
        width: parent.width
        visible: page.viewModel.newName.length > 0
        act: true
        text: qsTr("I am %1").arg(page.viewModel.newName)
        onFired: page.viewModel.add()
    }

    Repeater {
        model: page.viewModel.names

        Pad {
            required property string modelData
            required property int index

            objectName: "person" + index
            width: parent.width
            checkable: true
            chosen: index === page.viewModel.current
            glyph: Glyph.Person
            text: modelData
            onFired: page.viewModel.choose(index)
        }
    }
    TextEntry {
        objectName: "newName"
        width: parent.width
        label: qsTr("Somebody else")
        placeholder: qsTr("Your name")
        text: page.viewModel.newName
        error: page.viewModel.error
        onEdited: newText => page.viewModel.newName = newText
        onDone: page.viewModel.add()
    }
    Pad {
        objectName: "howWeTaste"
        width: parent.width
        text: qsTr("How we taste")
        onFired: page.app.openTasters()
    }
}
