import Spile.Components
import Spile.ViewModels

// Offers to scan the head before something is done with the barrel, and says that it was. It holds up nothing.
Pad {
    id: pad

    required property AppViewModel app
    required property string barrelId
    required property string barrelName
    property bool brief // there is little room
    readonly property bool sure: pad.barrelId.length > 0 && pad.app.scan.confirmed === pad.barrelId

    objectName: "sure"
    small: true
    enabled: !pad.sure
    glyph: pad.sure ? Glyph.Check : Glyph.Scan
    name: pad.sure ? qsTr("The head says %1").arg(pad.barrelName) : qsTr("Scan the head to be sure")
    text: !pad.brief ? pad.name : pad.sure ? pad.barrelName : qsTr("Scan head")
    onFired: pad.app.scanToBeSure(pad.barrelId, pad.barrelName)
}
