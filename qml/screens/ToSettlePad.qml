import Spile.Components
import Spile.ViewModels

// The way to what is to be settled, while there is anything. It tells of scores: not while somebody tastes.
Pad {
    id: pad

    required property AppViewModel app

    objectName: "toSettle"
    visible: pad.app.toSettle.count > 0 && pad.app.openSheets.count === 0 && pad.app.openFlights.count === 0
    act: true
    text: qsTr("To settle: %1").arg(pad.app.toSettle.count)
    hint: qsTr("What several devices have left open")
    onFired: pad.app.openToSettle()
}
