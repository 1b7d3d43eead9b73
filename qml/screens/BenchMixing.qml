pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// How one glass is measured, a step for each barrel.
Column {
    id: part

    required property BenchGlassesViewModel viewModel

    spacing: Theme.gap

    Banner {
        width: parent.width
        kind: Banner.Caution
        text: qsTr("Ease the pressure before you draw. No flame: the wood holds spirit. Tasting strong beer: spit, only a few barrels a day, not alone, and no driving. Local rules come first.")
    }
    Words {
        width: parent.width
        text: qsTr("Draw from the sample hole. Measure with a syringe or a cylinder of 100 mL, rinsed with water between two barrels. Write the glass's number under its foot.")
        color: Theme.colours.secondText
    }
    Repeater {
        model: part.viewModel.recipe

        Pad {
            id: step
            required property int index
            required property string title
            required property bool picked
            objectName: "measure" + step.index
            width: part.width
            arrangement: Pad.Leading
            checkable: true
            chosen: step.picked
            text: step.title
            onFired: part.viewModel.tick(step.index)
        }
    }
    Words {
        objectName: "rounding"
        width: parent.width
        visible: text.length > 0
        text: part.viewModel.roundingText
        color: Theme.colours.secondText
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Words {
        width: parent.width
        text: qsTr("Close it, turn it over twice, cool it and carbonate it. The others the same way, so that all are alike.")
        color: Theme.colours.secondText
    }
}
