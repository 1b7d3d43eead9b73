import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Words for what no scale asks.
Column {
    id: part

    required property TastingViewModel viewModel

    spacing: Theme.gap

    Chips {
        objectName: "noteChips"
        width: parent.width
        words: part.viewModel.noteChips
        chosen: part.viewModel.noteChipsChosen
        onToggled: index => part.viewModel.tapNoteChip(index)
    }
    TextEntry {
        objectName: "note"
        width: parent.width
        label: qsTr("In your own words")
        lines: 3
        text: part.viewModel.note
        onEdited: newText => part.viewModel.writeNote(newText)
    }
}
