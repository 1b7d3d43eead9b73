pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What the brewer decided, beside what the outlook said on that day.
Column {
    id: calls

    required property SaidRows rows

    spacing: Theme.gap
    visible: call.count > 0

    SectionTitle {
        width: parent.width
        text: qsTr("What was decided")
    }
    Repeater {
        id: call
        model: calls.rows

        Column {
            id: line
            required property int index
            required property string said
            required property string beside
            width: calls.width
            Accessible.role: Accessible.StaticText
            Accessible.name: line.said + ". " + line.beside

            Words {
                objectName: "call" + line.index
                width: parent.width
                text: line.said
                font: Theme.strongBody
                Accessible.ignored: true
            }
            Words {
                objectName: "callBeside" + line.index
                width: parent.width
                text: line.beside
                color: Theme.colours.secondText
                Accessible.ignored: true
            }
        }
    }
}
