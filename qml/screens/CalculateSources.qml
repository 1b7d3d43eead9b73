pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Where a calculator's numbers come from, once it is asked for.
Column {
    id: part

    required property CalculatingViewModel viewModel
    property bool shown

    signal handbookWanted()

    spacing: Theme.gap

    Connections {
        target: part.viewModel
        property int current: -1
        function onChanged() {
            if (part.viewModel.current !== current) {
                current = part.viewModel.current
                part.shown = false
            }
        }
    }
    Pad {
        objectName: "sources"
        width: parent.width
        marked: part.shown
        text: qsTr("Where it comes from")
        onFired: part.shown = !part.shown
    }
    Repeater {
        model: part.shown ? part.viewModel.sources : []
        Words {
            required property int index
            required property string modelData
            objectName: "source" + index
            width: part.width
            text: modelData
        }
    }
    Pad {
        objectName: "toHandbook"
        width: parent.width
        visible: part.shown
        text: qsTr("Read more in the handbook")
        onFired: part.handbookWanted()
    }
}
