pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The full barrels, of which some are chosen for a flight.
LongList {
    id: list

    required property NewFlightViewModel viewModel

    model: list.viewModel.barrels

    delegate: Pad {
        id: pad

        required property int index
        required property string title
        required property string detail
        required property bool suspect
        required property bool picked

        objectName: "barrel" + pad.index
        width: list.width
        leastHeight: Theme.rung
        arrangement: Pad.Leading
        glyph: pad.suspect ? Glyph.Caution : Glyph.None
        checkable: true
        chosen: pad.picked
        text: pad.title
        hint: pad.detail
        onFired: list.viewModel.toggle(pad.index)
    }
}
