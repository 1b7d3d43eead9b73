import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// One barrel: how full it is, what comes next, what else can be done, and what happened.
Page {
    id: page

    required property AppViewModel app
    readonly property BarrelViewModel viewModel: page.app.barrel

    // A work sheet that is open comes before what is due, a tasting sheet before it.
    readonly property bool workFirst: page.app.sheets.openText.length > 0 && !page.viewModel.sheetOpen

    title: page.viewModel.name
    subtitle: page.viewModel.code
    backShown: true
    onBackPressed: page.app.goBack()
    footer: Pad {
        objectName: "next"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        visible: page.viewModel.nextText.length > 0
        act: page.viewModel.standing !== NotchEdge.Resting || page.viewModel.scoresHidden || !page.viewModel.filled || page.workFirst
        text: page.workFirst ? page.app.sheets.openText : page.viewModel.nextText
        hint: page.viewModel.reason
        onFired: page.app.doNext()
    }

    Row {
        width: parent.width
        spacing: Theme.gap * 2

        HeadPicture {
            id: head
            width: Math.min(parent.width * 0.4, Theme.mm(30))
            height: width
            level: page.viewModel.level
            outlookLevel: page.viewModel.outlookLevel
            liquid: Theme.colours.beer
            description: qsTr("%1, level: %2").arg(page.viewModel.name).arg(page.viewModel.levelText)
        }
        Column {
            width: parent.width - head.width - parent.spacing
            spacing: Theme.gap / 2

            Fact { width: parent.width; label: qsTr("Holds"); value: page.viewModel.contents }
            Fact { width: parent.width; label: qsTr("Level"); value: page.viewModel.levelText }
            Fact { width: parent.width; label: qsTr("Next"); value: page.viewModel.reason }
        }
    }
    Fact { width: parent.width; visible: value.length > 0; label: qsTr("Outlook"); value: page.viewModel.outlookText }
    Fact { width: parent.width; visible: value.length > 0; label: qsTr("Filled"); value: page.viewModel.filledText }
    Fact { width: parent.width; label: qsTr("Tasted"); value: page.viewModel.tastedText }
    Fact { width: parent.width; visible: value.length > 0; label: qsTr("Place"); value: page.viewModel.place }
    Fact { width: parent.width; visible: value.length > 0; label: qsTr("Size"); value: page.viewModel.sizeText }
    AlarmList {
        width: parent.width
        alarms: page.viewModel.alarms
    }
    Banner {
        objectName: "loss"
        width: parent.width
        visible: page.viewModel.lossText.length > 0
        kind: Banner.Caution
        text: page.viewModel.lossText
    }
    Banner {
        width: parent.width
        visible: page.viewModel.scoresHidden
        kind: Banner.Note
        text: page.viewModel.openSheetText
    }
    Pad {
        objectName: "work"
        width: parent.width
        act: page.app.sheets.openText.length > 0
        text: page.app.sheets.openText.length > 0 ? page.app.sheets.openText : qsTr("Work sheets")
        hint: page.app.sheets.openText.length > 0 ? "" : qsTr("One step at a time, with this barrel's numbers")
        onFired: page.app.sheets.openText.length > 0 ? page.app.goOnWithWork() : page.app.openSheetsOfBarrel()
    }
    Pad {
        objectName: "openOutlook"
        width: parent.width
        visible: page.viewModel.filled && !page.viewModel.scoresHidden
        text: qsTr("Outlook")
        hint: qsTr("When it is ready, by its scores")
        onFired: page.app.openOutlook()
    }
    Pad {
        objectName: "openBench"
        width: parent.width
        visible: page.viewModel.forBlend && !page.viewModel.scoresHidden
        text: qsTr("Bench")
        hint: qsTr("Which barrels make the blend?")
        onFired: page.app.openBenchOfBarrel()
    }
    SectionTitle {
        width: parent.width
        text: qsTr("Record")
    }
    Grid {
        id: pads
        readonly property real share: Theme.largeText ? width : (width - spacing) / 2
        width: parent.width
        columns: Theme.largeText ? 1 : 2
        spacing: Theme.gap

        Pad { objectName: "draw"; width: pads.share; enabled: page.viewModel.filled; text: qsTr("Draw"); onFired: page.app.draw() }
        Pad { objectName: "taste"; width: pads.share; enabled: page.viewModel.filled; text: qsTr("Taste"); onFired: page.app.taste() }
        Pad { objectName: "photo"; width: pads.share; glyph: Glyph.Photo; text: qsTr("Photo"); onFired: page.app.photograph() }
        Pad { objectName: "gauge"; width: pads.share; enabled: page.viewModel.filled; text: qsTr("Level"); onFired: page.app.openRecord(RecordViewModel.Gauge) }
        Pad { objectName: "check"; width: pads.share; text: qsTr("Look over"); onFired: page.app.openRecord(RecordViewModel.Check) }
        Pad { objectName: "verdict"; width: pads.share; enabled: page.viewModel.filled; text: qsTr("Decide"); onFired: page.app.openRecord(RecordViewModel.Verdict) }
        Pad { objectName: "move"; width: pads.share; text: qsTr("Move"); onFired: page.app.openRecord(RecordViewModel.Move) }
        Pad {
            objectName: "fillOrEmpty"
            width: pads.share
            text: page.viewModel.filled ? qsTr("Empty") : qsTr("Fill")
            onFired: page.app.openRecord(page.viewModel.filled ? RecordViewModel.Empty : RecordViewModel.Fill)
        }
        Pad { objectName: "climate"; width: pads.share; text: qsTr("Air"); name: qsTr("The air of the place"); onFired: page.app.openClimate() }
        Pad {
            objectName: "windows"
            width: pads.share
            enabled: page.viewModel.filled
            text: qsTr("Windows")
            name: qsTr("Windows: what this beer should taste like")
            onFired: page.app.openWindows()
        }
        Pad { objectName: "calculate"; width: pads.share; text: qsTr("Calculate"); onFired: page.app.openCalculators() }
        Pad { objectName: "labels"; width: pads.share; text: qsTr("Label"); name: qsTr("Its label, as a file to print"); onFired: page.app.openLabelsOfBarrel() }
        Pad { objectName: "cost"; width: pads.share; text: qsTr("Cost"); name: qsTr("What it cost"); onFired: page.app.costOfBarrel() }
        Pad { objectName: "trace"; width: pads.share; text: qsTr("Trace"); name: qsTr("Trace: where its beer went"); onFired: page.app.traceBarrel() }
    }
    SectionTitle {
        width: parent.width
        text: qsTr("What happened")
    }
    HistoryList {
        width: parent.width
        rows: page.viewModel.history
    }
}
