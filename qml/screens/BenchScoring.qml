import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// One thing asked of a glass that has only a letter.
Column {
    id: part

    required property BenchGlassesViewModel viewModel

    spacing: Theme.gap

    Readout {
        objectName: "letter"
        width: parent.width
        text: part.viewModel.letter
    }
    Ladder {
        objectName: "ladder"
        width: parent.width
        value: part.viewModel.value
        words: part.viewModel.ladderWords
        onChosen: value => part.viewModel.choose(value)
        onNudged: by => part.viewModel.nudge(by)
    }
}
