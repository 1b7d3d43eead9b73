import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What would help while nothing is read, also said to those who hear the screen.
Words {
    id: words

    required property ScanViewModel viewModel
    property bool torchPossible
    property bool torchOn

    text: words.said(words.viewModel.advice)
    font: Theme.strongBody
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    function said(advice: int): string {
        switch (advice) {
        case ScanViewModel.Light:
            return words.torchOn ? qsTr("Still too dark: go closer.")
                 : words.torchPossible ? qsTr("Too dark: switch on the torch.")
                                       : qsTr("Too dark: bring a light.")
        case ScanViewModel.Closer:
            return qsTr("Go closer.")
        case ScanViewModel.Still:
            return qsTr("Hold still.")
        case ScanViewModel.Wipe:
            return qsTr("Wipe the label.")
        default:
            return qsTr("Not read yet. Go closer, give it light, wipe the label.")
        }
    }
}
