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
    beside: Pad {
        objectName: page.viewModel.stopped ? "giveUp" : "skip"
        width: parent.width
        small: true
        marked: page.skipping
        text: page.viewModel.stopped ? qsTr("Give up") : qsTr("Skip")
        onFired: page.viewModel.stopped ? page.viewModel.giveUp() : page.toggleSkipping()
    }
    footer: Row {
        id: row
        readonly property real small: Math.round((width - spacing) * 0.32)
        readonly property real large: width - spacing - small
        width: parent.width
        spacing: Theme.gap

        Pad {
            objectName: page.viewModel.stopped ? "leave" : "stop"
            width: row.small
            height: Math.max(implicitHeight, Theme.main)
            text: page.viewModel.stopped ? qsTr("Leave it") : qsTr("Stop")
            onFired: page.viewModel.stopped ? page.app.goBack() : page.viewModel.stop()
        }
        HoldPad {
            objectName: "holdToBegin"
            width: row.large
            visible: !page.viewModel.begun && !page.viewModel.stopped && page.viewModel.holdToBegin
            enabled: page.viewModel.beginMissing.length === 0
            text: page.viewModel.beginText
            hint: page.viewModel.beginMissing.length > 0 ? page.viewModel.beginMissing
                                                         : qsTr("Hold: I have seen to the cautions")
            onHeld: page.viewModel.beginStep()
        }
        Pad {
            objectName: "begin"
            width: row.large
            height: Math.max(implicitHeight, Theme.main)
            visible: !page.viewModel.begun && !page.viewModel.stopped && !page.viewModel.holdToBegin
            act: true
            enabled: page.viewModel.beginMissing.length === 0
            text: page.viewModel.beginText
            hint: page.viewModel.beginMissing
            onFired: page.viewModel.beginStep()
        }
        Pad {
            objectName: "finish"
            width: row.large
            height: Math.max(implicitHeight, Theme.main)
            visible: page.viewModel.begun && !page.viewModel.stopped
            act: page.viewModel.ripe || page.viewModel.tastes
            enabled: page.viewModel.canFinish
            text: page.viewModel.finishText
            hint: page.viewModel.missing
            onFired: page.viewModel.finish()
        }
        Pad {
            objectName: "goOn"
            width: row.large
            height: Math.max(implicitHeight, Theme.main)
            visible: page.viewModel.stopped
            act: true
            text: qsTr("Go on")
            onFired: page.viewModel.goOn()
        }
    }

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
    function toggleSkipping() {
        page.skipping = !page.skipping
        page.scroller.contentY = 0
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
    Banner { // before the step
        objectName: "cautions"
        width: parent.width
        visible: page.viewModel.cautions.length > 0 && !page.viewModel.begun
        kind: Banner.Caution
        text: page.viewModel.cautions
    }
    SurePad {
        width: parent.width
        visible: page.viewModel.atFirst && !page.viewModel.stopped && page.viewModel.barrelId.length > 0
        app: page.app
        barrelId: page.viewModel.barrelId
        barrelName: page.viewModel.barrelName
    }
    TimerFace {
        objectName: "timer"
        width: parent.width
        visible: page.viewModel.timed && page.viewModel.begun
        text: page.viewModel.pausedText.length > 0 ? page.viewModel.pausedText : page.viewModel.timer.text
        caption: page.viewModel.timerCaption
        overdue: page.viewModel.timer.over
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
    Banner { // still to be read while it is done
        width: parent.width
        visible: page.viewModel.cautions.length > 0 && page.viewModel.begun
        kind: Banner.Caution
        text: page.viewModel.cautions
    }
}
