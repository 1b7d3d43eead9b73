pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The flights that can be gone on with; none names a barrel.
Column {
    id: part

    required property OpenFlightsViewModel viewModel

    spacing: Theme.gap

    Repeater {
        model: part.viewModel.flights

        Pad {
            id: pad
            required property int index
            required property string title
            required property string where
            objectName: "goOnFlight" + pad.index
            width: part.width
            act: pad.index === 0
            text: pad.title
            hint: qsTr("Go on: %1").arg(pad.where)
            onFired: part.viewModel.goOn(pad.index)
        }
    }
}
