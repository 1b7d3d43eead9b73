pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// One step of a work sheet: its cautions first, then what to do, what to fill in, and what this barrel's numbers are.
Page {
    id: page

    required property AppViewModel app
    readonly property WorkViewModel viewModel: page.app.work
    property bool skipping

    title: page.viewModel.title
    subtitle: page.viewModel.where
    backShown: true
    who: page.app.people.name.length > 0 ? page.app.people.name : qsTr("Who?")
    onBackPressed: page.app.goBack()
    onWhoPressed: page.app.navigator.open(Navigator.People)
    banner: [
        Banner {
            width: parent.width
            visible: page.viewModel.error.length > 0
            kind: Banner.Refused
            text: page.viewModel.error
        }
    ]
    footer: [
        HoldPad {
            objectName: "holdToBegin"
            width: parent.width
            visible: !page.viewModel.begun && !page.viewModel.stopped && page.viewModel.holdToBegin
            enabled: page.viewModel.beginMissing.length === 0
            text: page.viewModel.beginText
            hint: page.viewModel.beginMissing.length > 0 ? page.viewModel.beginMissing
                                                         : qsTr("Hold: I have seen to the cautions")
            onHeld: page.viewModel.beginStep()
        },
        Pad {
            objectName: "begin"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: !page.viewModel.begun && !page.viewModel.stopped && !page.viewModel.holdToBegin
            act: true
            enabled: page.viewModel.beginMissing.length === 0
            text: page.viewModel.beginText
            hint: page.viewModel.beginMissing
            onFired: page.viewModel.beginStep()
        },
        Pad {
            objectName: "finish"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: page.viewModel.begun && !page.viewModel.stopped
            act: page.viewModel.ripe || page.viewModel.tastes
            enabled: page.viewModel.canFinish
            text: page.viewModel.finishText
            hint: page.viewModel.missing
            onFired: page.viewModel.finish()
        },
        Pad {
            objectName: "goOn"
            width: parent.width
            height: Math.max(implicitHeight, Theme.main)
            visible: page.viewModel.stopped
            act: true
            text: qsTr("Go on")
            onFired: page.viewModel.goOn()
        },
        Row {
            id: row
            readonly property real share: (width - spacing) / 2
            width: parent.width
            spacing: Theme.gap

            Pad {
                objectName: "stop"
                width: row.share
                visible: !page.viewModel.stopped
                text: qsTr("Stop")
                onFired: page.viewModel.stop()
            }
            Pad {
                objectName: "leave"
                width: row.share
                visible: page.viewModel.stopped
                text: qsTr("Leave it for now")
                onFired: page.app.goBack()
            }
            Pad {
                objectName: "skip"
                width: row.share
                visible: !page.viewModel.stopped
                marked: page.skipping
                text: qsTr("Skip")
                onFired: page.skipping = !page.skipping
            }
            Pad {
                objectName: "giveUp"
                width: row.share
                visible: page.viewModel.stopped
                text: qsTr("Give the sheet up")
                onFired: page.viewModel.giveUp()
            }
        }
    ]

    Connections {
        target: page.viewModel
        property string step
        function onChanged() {
            if (page.viewModel.stepName !== step) {
                step = page.viewModel.stepName
                page.skipping = false
                page.scroller.contentY = 0
            }
        }
    }

    Banner {
        objectName: "stopped"
        width: parent.width
        visible: page.viewModel.stopped
        kind: page.viewModel.closeText.length > 0 ? Banner.Caution : Banner.Note
        text: page.viewModel.closeText.length > 0 ? qsTr("Stopped. %1").arg(page.viewModel.closeText)
                                                  : qsTr("Stopped. Nothing has to be closed.")
    }
    Column {
        width: parent.width
        visible: page.skipping && !page.viewModel.stopped
        spacing: Theme.gap
        SectionTitle { width: parent.width; text: qsTr("Why is it skipped?") }
        Chips {
            objectName: "skipReasons"
            width: parent.width
            words: page.viewModel.skipReasons
            onToggled: index => page.viewModel.skip(index)
        }
    }
    Repeater { // before the step
        model: page.viewModel.cautions
        Banner {
            required property string modelData
            width: parent.width
            kind: Banner.Caution
            text: modelData
        }
    }
    Words {
        objectName: "say"
        width: parent.width
        text: page.viewModel.say
        font: Theme.glance
    }
    Words {
        width: parent.width
        visible: page.viewModel.hint.length > 0
        text: page.viewModel.hint
        color: Theme.colours.secondText
    }
    TimerFace {
        objectName: "timer"
        width: parent.width
        visible: page.viewModel.timed && page.viewModel.begun
        text: page.viewModel.timer.text
        caption: page.viewModel.timerCaption
        overdue: page.viewModel.timer.over
    }
    StepFacts {
        width: parent.width
        facts: page.viewModel.facts
    }
    StepTicks {
        width: parent.width
        visible: page.viewModel.begun
        viewModel: page.viewModel
    }
    StepAsks {
        width: parent.width
        visible: page.viewModel.begun
        viewModel: page.viewModel
    }
}
