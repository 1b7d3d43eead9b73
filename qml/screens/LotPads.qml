import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What can be done with a lot. What needs beer in it waits for some.
Column {
    id: pads

    required property AppViewModel app
    readonly property LotViewModel lot: pads.app.lot
    readonly property bool free: pads.lot.begun && pads.lot.heldText.length === 0

    spacing: Theme.gap

    Pad {
        objectName: "takeInBarrel"
        width: parent.width
        act: pads.lot.loaded && !pads.lot.begun
        text: qsTr("Take in a barrel")
        hint: qsTr("Empty it into this lot, step by step")
        onFired: pads.app.chooseBarrelForLot()
    }
    Grid {
        id: grid
        readonly property real share: Theme.largeText ? width : (width - spacing) / 2
        width: parent.width
        columns: Theme.largeText ? 1 : 2
        spacing: Theme.gap

        Pad { objectName: "finish"; width: grid.share; enabled: pads.lot.begun; text: qsTr("Finish"); name: qsTr("Finish: put something in"); onFired: pads.app.beginLotSheet("finish", pads.lot.lotId) }
        Pad { objectName: "treat"; width: grid.share; enabled: pads.lot.begun; text: qsTr("Filter"); name: qsTr("Filter or pasteurise"); onFired: pads.app.beginLotSheet("treat", pads.lot.lotId) }
        Pad { objectName: "carbonate"; width: grid.share; enabled: pads.lot.begun; text: qsTr("Carbonate"); onFired: pads.app.beginLotSheet("carbonate", pads.lot.lotId) }
        Pad { objectName: "package"; width: grid.share; enabled: pads.free; text: qsTr("Package"); onFired: pads.app.beginLotSheet("package", pads.lot.lotId) }
        Pad { objectName: "hold"; width: grid.share; text: qsTr("Hold"); name: qsTr("Hold until a result is in"); onFired: pads.app.holdLot() }
        Pad { objectName: "pourAway"; width: grid.share; enabled: pads.lot.begun; text: qsTr("Pour away"); onFired: pads.app.pourLotAway() }
        Pad { objectName: "cost"; width: grid.share; text: qsTr("Cost"); name: qsTr("What it cost"); onFired: pads.app.costOfLot() }
        Pad { objectName: "trace"; width: grid.share; enabled: pads.lot.begun; text: qsTr("Trace"); name: qsTr("Trace: where it came from and where it went"); onFired: pads.app.traceLot() }
    }
}
