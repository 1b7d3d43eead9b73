pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Many things told below one another, part by part: a lot, a trace, a report. Some have a share as a bar, or pads.
Column {
    id: list

    required property PartRows rows

    signal act(int index)
    signal actOther(int index)

    spacing: Theme.gap
    visible: line.count > 0

    Repeater {
        id: line
        model: list.rows

        Column {
            id: part
            required property int index
            required property string kind
            required property string heading
            required property string said
            required property string beside
            required property real share
            required property string padText
            required property string otherText
            width: list.width
            spacing: Theme.tightPadding

            SectionTitle {
                width: parent.width
                visible: part.heading.length > 0
                text: part.heading
            }
            Column {
                objectName: "part" + part.index
                width: parent.width
                Accessible.role: Accessible.StaticText
                Accessible.name: part.beside.length > 0 ? part.said + ". " + part.beside : part.said

                Words {
                    width: parent.width
                    text: part.said
                    font: Theme.strongBody
                    Accessible.ignored: true
                }
                SpanBar {
                    width: parent.width
                    visible: part.share >= 0
                    from: 0
                    to: part.share
                }
                Words {
                    width: parent.width
                    visible: part.beside.length > 0
                    text: part.beside
                    color: Theme.colours.secondText
                    Accessible.ignored: true
                }
            }
            Column {
                width: parent.width
                visible: part.padText.length > 0 || part.otherText.length > 0
                spacing: Theme.gap

                Pad {
                    objectName: "act" + part.index
                    width: parent.width
                    visible: part.padText.length > 0
                    small: true
                    text: part.padText
                    name: qsTr("%1: %2").arg(part.said).arg(part.padText)
                    onFired: list.act(part.index)
                }
                Pad {
                    objectName: "other" + part.index
                    width: parent.width
                    visible: part.otherText.length > 0
                    small: true
                    text: part.otherText
                    name: qsTr("%1: %2").arg(part.said).arg(part.otherText)
                    onFired: list.actOther(part.index)
                }
            }
        }
    }
}
