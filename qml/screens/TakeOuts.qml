pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What has been in a lot as long as it should: a pad each, that leads to the lot.
Column {
    id: part

    required property AppViewModel app
    readonly property DueViewModel viewModel: part.app.due

    visible: part.viewModel.takeOuts.length > 0
    spacing: Theme.gap

    Repeater {
        model: part.viewModel.takeOuts

        Pad {
            id: pad
            required property int index
            required property string modelData
            objectName: "takeOut" + pad.index
            width: part.width
            text: pad.modelData
            hint: part.viewModel.takeOutsDue[pad.index] ?? ""
            onFired: part.app.openLot(part.viewModel.lotAt(pad.index))
        }
    }
}
