pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What is filled in at this step: numbers that are stepped, words to choose, a beer.
Column {
    id: part

    required property WorkViewModel viewModel

    spacing: Theme.gap * 2

    Repeater {
        model: part.viewModel.asks
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
            required property string entry
            required property string typed
            required property string note

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
                onBegun: part.viewModel.stepAsk(line.ask, 0)
                onStepped: count => part.viewModel.stepAsk(line.ask, count)
            }
            SectionTitle {
                width: parent.width
                visible: line.kind !== AskRows.Number
                text: line.label
            }
            Chips {
                objectName: "words_" + line.ask
                width: parent.width
                visible: line.kind !== AskRows.Number && line.offered.length > 0
                words: line.offered
                choice: line.choice
                onToggled: index => part.viewModel.chooseWord(line.ask, index)
            }
            TextEntry {
                objectName: "typed_" + line.ask
                width: parent.width
                visible: line.kind === AskRows.Named
                label: line.entry
                text: line.typed
                onEdited: newText => part.viewModel.typeWord(line.ask, newText)
            }
            Words {
                width: parent.width
                visible: line.note.length > 0
                text: line.note
                color: Theme.colours.secondText
            }
        }
    }
}
