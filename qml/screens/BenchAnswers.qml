pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What comes nearest: the answers, the open one beside them where there is room, and what is in the way if there is none.
Grid {
    id: part

    required property BenchViewModel viewModel
    readonly property bool wide: part.width >= Theme.mm(120) && !Theme.largeText
    readonly property real share: part.wide ? (part.width - part.columnSpacing) / 2 : part.width

    columns: part.wide ? 2 : 1
    columnSpacing: Theme.gap * 2
    rowSpacing: Theme.gap

    Column {
        width: part.share
        spacing: Theme.gap

        Words {
            objectName: "proof"
            width: parent.width
            text: part.viewModel.proof
            color: Theme.colours.secondText
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Repeater {
            model: part.viewModel.inTheWay

            Fact {
                id: way
                required property int index
                required property string title
                required value
                required note
                objectName: "inTheWay" + way.index
                width: part.share
                label: way.title
            }
        }
        Repeater {
            model: part.viewModel.answers

            Pad {
                id: answer
                required property int index
                required property string title
                required property string value
                required property bool picked
                objectName: "answer" + answer.index
                width: part.share
                arrangement: Pad.Stacked
                marked: answer.index === part.viewModel.openAnswer
                checkable: true
                checked: answer.marked
                glyph: answer.picked ? Glyph.Check : Glyph.None
                text: answer.title
                hint: answer.value
                onFired: part.viewModel.showAnswer(answer.index)
            }
        }
        Words {
            width: parent.width
            visible: text.length > 0
            text: part.viewModel.leftOut
            color: Theme.colours.secondText
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }
    BenchAnswer {
        width: part.share
        visible: part.viewModel.openAnswer >= 0
        viewModel: part.viewModel
    }
}
