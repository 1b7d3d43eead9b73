pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What this barrel's numbers are at this step; one that is beyond a limit has the sign of a caution.
Column {
    id: part

    required property FactRows facts

    spacing: Theme.tightPadding

    Repeater {
        model: part.facts
        Column {
            id: line
            required property string label
            required property string value
            required property bool loud
            width: part.width
            Fact {
                width: parent.width
                visible: !line.loud
                label: line.label
                value: line.value
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
