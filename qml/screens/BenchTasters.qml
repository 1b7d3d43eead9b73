pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Who tastes the glasses; then somebody else sets them out under letters.
Column {
    id: part

    required property AppViewModel app
    readonly property BenchGlassesViewModel viewModel: part.app.glasses
    readonly property bool settingOut: part.viewModel.stage === BenchGlassesViewModel.SettingOut

    spacing: Theme.gap

    Words {
        width: parent.width
        text: part.settingOut
              ? qsTr("%1 looks away. Somebody else sets the glasses out under these letters, the numbers hidden:").arg(part.viewModel.taster)
              : qsTr("Who tastes? Each taster has an order and letters of their own. No talk until all have tasted.")
        color: Theme.colours.secondText
    }
    Repeater {
        model: part.settingOut ? null : part.viewModel.tasters

        Pad {
            id: taster
            required property int index
            required property string title
            required property string value
            required property bool picked
            objectName: "taster" + taster.index
            width: part.width
            marked: taster.picked
            glyph: taster.picked ? Glyph.Check : Glyph.Person
            text: taster.title
            hint: taster.value
            onFired: part.viewModel.chooseTaster(taster.index)
        }
    }
    Pad {
        objectName: "otherTaster"
        width: parent.width
        visible: !part.settingOut
        small: true
        glyph: Glyph.More
        text: qsTr("Somebody else")
        onFired: part.app.navigator.open(Navigator.People)
    }
    Repeater {
        model: part.settingOut ? part.viewModel.setOut : null

        Fact {
            id: glass
            required property int index
            required property string title
            required value
            required note
            objectName: "setOut" + glass.index
            width: part.width
            label: glass.title
        }
    }
}
