pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What a calculator answers; its labels are longer than those of a record. Beyond a limit: with the sign of a caution.
Column {
    id: part

    required property FactRows answers

    spacing: Theme.padding

    Repeater {
        model: part.answers
        Column {
            id: line
            required property string label
            required property string value
            required property bool loud
            width: part.width
            Grid {
                id: fact
                readonly property real half: Theme.largeText ? width : (width - columnSpacing) / 2
                width: parent.width
                visible: !line.loud
                columns: Theme.largeText ? 1 : 2
                columnSpacing: Theme.padding
                Accessible.role: Accessible.StaticText
                Accessible.name: qsTr("%1: %2").arg(line.label).arg(line.value)
                Words {
                    width: fact.half
                    text: line.label
                    font: Theme.label
                    color: Theme.colours.secondText
                    Accessible.ignored: true
                }
                Words {
                    width: fact.half
                    text: line.value
                    font: Theme.strongBody
                    Accessible.ignored: true
                }
            }
            Banner {
                width: parent.width
                visible: line.loud
                kind: Banner.Caution
                text: qsTr("%1: %2").arg(line.label).arg(line.value)
            }
        }
    }
}
