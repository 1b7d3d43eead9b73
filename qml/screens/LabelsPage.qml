import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Labels for the heads of barrels: for which, on what, and the file to print.
Page {
    id: page

    required property AppViewModel app
    readonly property LabelsViewModel viewModel: page.app.labels
    readonly property bool written: page.viewModel.fileName.length > 0

    title: qsTr("Labels")
    subtitle: page.viewModel.countText
    backShown: true
    onBackPressed: page.app.goBack()
    banner: Banner { // in sight wherever the page is scrolled to
        objectName: "error"
        width: parent.width
        visible: page.viewModel.error.length > 0
        kind: Banner.Refused
        text: page.viewModel.error
    }
    footer: Pad {
        objectName: "write"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: !page.written
        enabled: page.viewModel.loaded && !page.viewModel.writing && page.viewModel.problem.length === 0
        text: page.written ? qsTr("Write it anew") : qsTr("Write the label file")
        hint: page.viewModel.problem.length > 0 ? qsTr("Not like this: see above") : ""
        onFired: page.viewModel.write()
    }

    Column {
        width: parent.width
        spacing: Theme.gap
        visible: page.written

        Banner {
            objectName: "done"
            width: parent.width
            text: qsTr("The label file is written. Print it at 100 %, \"actual size\".")
        }
        Words { objectName: "file"; width: parent.width; text: page.viewModel.fileName; wrapMode: Text.WrapAnywhere; font: Theme.strongBody }
        Words { objectName: "fileText"; width: parent.width; text: page.viewModel.fileText }
        Banner {
            objectName: "incomplete"
            width: parent.width
            visible: text.length > 0
            kind: Banner.Caution
            text: page.viewModel.incompleteText
        }
    }
    SectionTitle { width: parent.width; text: qsTr("For which barrels?") }
    Chips {
        objectName: "subjects"
        width: parent.width
        words: page.viewModel.subjects
        choice: page.viewModel.subject
        onToggled: index => page.viewModel.chooseSubject(index)
    }
    Words {
        width: parent.width
        visible: page.viewModel.spares
        text: qsTr("Spare labels have new codes. Stick one on a barrel, scan it, and register the barrel with it.")
        color: Theme.colours.secondText
    }
    Stepper {
        objectName: "spares"
        width: parent.width
        visible: page.viewModel.spares
        label: qsTr("How many?")
        readout: page.viewModel.spareCount
        smallStep: "1"
        bigStep: "10"
        onStepped: count => page.viewModel.stepSpares(count)
    }
    LabelStock {
        width: parent.width
        viewModel: page.viewModel
    }
    Banner {
        objectName: "problem"
        width: parent.width
        visible: page.viewModel.problem.length > 0
        kind: Banner.Caution
        text: page.viewModel.problem
    }
    SectionTitle {
        width: parent.width
        visible: page.viewModel.picture.length > 0
        text: qsTr("What one looks like")
    }
    LabelPicture {
        objectName: "picture"
        anchors.horizontalCenter: parent.horizontalCenter
        visible: page.viewModel.picture.length > 0
        path: page.viewModel.picture
        paper: page.viewModel.pictureSize
        description: qsTr("The label: %1").arg(page.viewModel.pictureText)
        widest: page.width - 2 * Theme.margin
        highest: Theme.mm(60)
    }
    Words {
        objectName: "pictureText"
        width: parent.width
        visible: text.length > 0
        text: page.viewModel.pictureText
        color: Theme.colours.secondText
    }
    SectionTitle {
        width: parent.width
        visible: page.viewModel.folders.length > 0
        text: qsTr("Where is the file put?")
    }
    Chips {
        objectName: "folders"
        width: parent.width
        words: page.viewModel.folders
        choice: page.viewModel.folder
        onToggled: index => page.viewModel.chooseFolder(index)
    }
    SectionTitle { width: parent.width; text: qsTr("To make them last") }
    Words {
        width: parent.width
        text: qsTr("Matt white stock, printed by thermal transfer with a resin ribbon, or under a matt film. No gloss: it glares in the light of a phone.")
    }
    Words {
        width: parent.width
        text: qsTr("Stick it on a dry head, on one board if it is wide enough, away from the joints and from the edge that drips.")
    }
    Words {
        width: parent.width
        text: qsTr("Print one page at 100 %, \"actual size\", and measure the line of 50 mm: on head plates it is at the foot, else on the test page.")
    }
    Pad {
        objectName: "toHandbook"
        width: parent.width
        text: qsTr("Read more in the handbook")
        onFired: {
            page.app.handbook.turnTo("labels.md")
            page.app.navigator.open(Navigator.Handbook)
        }
    }
}
