import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// A barrel is made known, then its code is shown, large enough to be chalked on its head.
Item {
    id: page

    required property AppViewModel app
    readonly property RegisteringViewModel viewModel: page.app.registering
    readonly property bool done: page.viewModel.code.length > 0

    Page {
        anchors.fill: parent
        visible: !page.done
        title: qsTr("Register a barrel")
        subtitle: page.viewModel.labelCode.length > 0 ? qsTr("Its label says %1").arg(page.viewModel.labelCode)
                                                      : qsTr("Leave open what you do not know")
        backShown: true
        onBackPressed: page.app.goBack()
        footer: Pad {
            objectName: "record"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            act: true
            enabled: !page.viewModel.busy
            text: qsTr("Register")
            onFired: page.viewModel.record()
        }

        Banner {
            width: parent.width
            visible: page.viewModel.error.length > 0
            kind: Banner.Refused
            text: page.viewModel.error
        }
        TextEntry {
            objectName: "mark"
            width: parent.width
            label: qsTr("Your own mark for it")
            placeholder: qsTr("Rum 3")
            text: page.viewModel.mark
            onEdited: newText => page.viewModel.mark = newText
        }
        SectionTitle { width: parent.width; text: qsTr("Is there beer in it?") }
        Chips {
            objectName: "full"
            width: parent.width
            words: [qsTr("No, empty"), qsTr("Yes, full")]
            choice: page.viewModel.full ? 1 : 0
            onToggled: index => page.viewModel.full = index === 1
        }
        RegisterFull {
            width: parent.width
            visible: page.viewModel.full
            viewModel: page.viewModel
        }
        SectionTitle { width: parent.width; text: qsTr("What did it hold before?") }
        Chips {
            objectName: "spirits"
            width: parent.width
            words: page.viewModel.spirits
            choice: page.viewModel.spirit
            onToggled: index => page.viewModel.spirit = index
        }
        SectionTitle { width: parent.width; text: qsTr("How large is it?") }
        Chips {
            objectName: "sizes"
            width: parent.width
            words: page.viewModel.sizes
            choice: page.viewModel.size
            onToggled: index => page.viewModel.size = index
        }
        RegisterMore {
            width: parent.width
            viewModel: page.viewModel
        }
    }
    RegisteredPage {
        anchors.fill: parent
        visible: page.done
        app: page.app
    }
}
