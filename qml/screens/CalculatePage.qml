pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The calculators: their list, and the one that is chosen, its answers above what is filled in.
Page {
    id: page

    required property AppViewModel app
    readonly property CalculatingViewModel viewModel: page.app.calculating
    readonly property bool chosen: page.viewModel.current >= 0

    title: page.chosen ? page.viewModel.title : qsTr("Calculate")
    subtitle: page.viewModel.barrelName
    backShown: true
    onBackPressed: page.app.goBack()
    onChosenChanged: page.scroller.contentY = 0
    banner: [ // it stays in sight while the inputs are stepped
        Banner {
            objectName: "missing"
            width: parent.width
            visible: page.viewModel.missing.length > 0
            text: page.viewModel.missing
        },
        Banner {
            objectName: "error"
            width: parent.width
            visible: page.viewModel.error.length > 0
            kind: Banner.Refused
            text: page.viewModel.error
        },
        Fact {
            objectName: "mainAnswer"
            width: parent.width
            visible: page.viewModel.mainValue.length > 0
            label: page.viewModel.mainLabel
            value: page.viewModel.mainValue
        }
    ]

    Repeater {
        model: page.chosen ? [] : page.viewModel.titles

        Pad {
            id: calculator
            required property int index
            required property string modelData
            objectName: "calculator" + calculator.index
            width: parent.width
            text: calculator.modelData
            hint: page.viewModel.uses[calculator.index] ?? ""
            onFired: page.viewModel.choose(calculator.index)
        }
    }
    Words {
        width: parent.width
        visible: page.chosen
        text: page.viewModel.use
        color: Theme.colours.secondText
    }
    Banner {
        objectName: "caution"
        width: parent.width
        visible: page.viewModel.caution.length > 0
        kind: Banner.Caution
        text: page.viewModel.caution
    }
    CalculateAnswers {
        objectName: "answers"
        width: parent.width
        answers: page.viewModel.answers
    }
    CalculateInputs {
        width: parent.width
        visible: page.chosen
        viewModel: page.viewModel
    }
    CalculateSources {
        width: parent.width
        visible: page.chosen
        viewModel: page.viewModel
        onHandbookWanted: {
            page.app.handbook.turnTo(page.viewModel.handbook)
            page.app.navigator.open(Navigator.Handbook)
        }
    }
}
