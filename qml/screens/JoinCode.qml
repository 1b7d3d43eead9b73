pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme

// A join code, to be compared or typed group by group: in lines of as many groups each as can be alike.
Column {
    id: code

    required property string value
    readonly property list<string> groups: code.value.split("-")
    readonly property real widest: {
        let width = 0
        for (let i = 0; i < cells.count; ++i) {
            width = Math.max(width, cells.itemAt(i)?.implicitWidth ?? 0)
        }
        return width
    }

    spacing: Theme.tightPadding
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("Its code: %1").arg(code.value)

    Words {
        width: parent.width
        text: qsTr("Its code")
        font: Theme.label
        color: Theme.colours.secondText
        Accessible.ignored: true
    }
    Grid {
        id: grid
        readonly property int fitting: Math.max(1, Math.floor((code.width + columnSpacing) / (code.widest + columnSpacing)))
        readonly property int lines: Math.ceil(code.groups.length / fitting)
        columns: Math.ceil(code.groups.length / lines)
        columnSpacing: Theme.gap
        rowSpacing: Theme.tightPadding

        Repeater {
            id: cells
            model: code.groups
            Words {
                required property string modelData
                text: modelData
                font: Theme.strongBody
                Accessible.ignored: true
            }
        }
    }
}
