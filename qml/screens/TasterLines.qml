pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What is told of each taster, or of each attribute: a name, and the sentences under it.
Column {
    id: list

    required property SaidRows rows
    required property string title
    required property string lineName

    spacing: Theme.gap
    visible: line.count > 0

    SectionTitle {
        width: parent.width
        text: list.title
    }
    Repeater {
        id: line
        model: list.rows

        Column {
            id: block
            required property int index
            required property string said
            required property string beside
            objectName: list.lineName + block.index
            width: list.width
            Accessible.role: Accessible.StaticText
            Accessible.name: block.said + ". " + block.beside

            Words {
                width: parent.width
                text: block.said
                font: Theme.strongBody
                Accessible.ignored: true
            }
            Words {
                objectName: list.lineName + "Told" + block.index
                width: parent.width
                text: block.beside
                Accessible.ignored: true
            }
        }
    }
}
