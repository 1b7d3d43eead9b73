import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// What the labels are printed on, and from how far they are to be read.
Column {
    id: stock

    required property LabelsViewModel viewModel

    spacing: Theme.gap

    SectionTitle { width: parent.width; text: qsTr("On what are they printed?") }
    Chips {
        objectName: "kinds"
        width: parent.width
        words: stock.viewModel.kinds
        choice: stock.viewModel.kind
        onToggled: index => stock.viewModel.chooseKind(index)
    }
    Chips {
        objectName: "stocks"
        width: parent.width
        words: stock.viewModel.stocks
        choice: stock.viewModel.stock
        onToggled: index => stock.viewModel.chooseStock(index)
    }
    Words {
        width: parent.width
        text: qsTr("Head plates have two codes and are cut out of plain paper. They grow with the distance.")
        visible: stock.viewModel.kind === 0
        color: Theme.colours.secondText
    }
    Stepper {
        objectName: "distance"
        width: parent.width
        label: qsTr("Read from how far?")
        readout: stock.viewModel.distance
        unit: stock.viewModel.distanceUnit
        smallStep: stock.viewModel.distanceStep
        bigStep: stock.viewModel.bigDistanceStep
        onStepped: count => stock.viewModel.stepDistance(count)
    }
    Stepper {
        objectName: "from"
        width: parent.width
        visible: stock.viewModel.onSheet
        label: qsTr("First free label of the sheet")
        readout: stock.viewModel.from
        smallStep: "1"
        bigStep: "10"
        onStepped: count => stock.viewModel.stepFrom(count)
    }
    Pad {
        objectName: "testPage"
        width: parent.width
        checkable: true
        chosen: stock.viewModel.testPage
        text: qsTr("A test page first")
        hint: qsTr("Outlines and a line of 50 mm, for plain paper")
        onFired: stock.viewModel.toggleTestPage()
    }
}
