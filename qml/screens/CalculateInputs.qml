pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What a calculator asks for: numbers that are stepped, words to choose.
Column {
    id: part

    required property CalculatingViewModel viewModel

    spacing: Theme.gap * 2

    Repeater {
        model: part.viewModel.inputs
        Column {
            id: line

            required property string ask
            required property string label
            required property int kind
            required property string readout
            required property string unit
            required property string smallStep
            required property string bigStep
            required property bool isEmpty
            required property bool canLess
            required property bool canMore
            required property list<string> offered
            required property int choice
            required property string note // it may be left out

            width: part.width
            spacing: Theme.gap

            Stepper {
                objectName: "number_" + line.ask
                width: parent.width
                visible: line.kind === AskRows.Number
                label: line.label
                readout: line.readout
                unit: line.unit
                smallStep: line.smallStep
                bigStep: line.bigStep
                canLess: line.isEmpty || line.canLess
                canMore: line.isEmpty || line.canMore
                empty: line.isEmpty
                onBegun: part.viewModel.stepInput(line.ask, 0)
                onStepped: count => part.viewModel.stepInput(line.ask, count)
            }
            SectionTitle {
                width: parent.width
                visible: line.kind === AskRows.Words
                text: line.label
            }
            Chips {
                objectName: "words_" + line.ask
                width: parent.width
                visible: line.kind === AskRows.Words
                words: line.offered
                choice: line.choice
                onToggled: index => part.viewModel.chooseWord(line.ask, index)
            }
            Words {
                width: parent.width
                visible: line.note.length > 0 && line.isEmpty
                text: line.note
                color: Theme.colours.secondText
            }
            Pad {
                objectName: "forget_" + line.ask
                width: parent.width
                small: true
                visible: line.note.length > 0 && !line.isEmpty
                text: qsTr("Leave it out")
                onFired: part.viewModel.forget(line.ask)
            }
        }
    }
}
