import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What can be done at day's end, above the list of what was recorded.
Column {
    id: pads

    required property AppViewModel app
    readonly property int open: pads.app.openSheets.count + pads.app.openWork.count

    spacing: Theme.gap

    TodayStanding { width: parent.width; viewModel: pads.app.joining }
    Banner {
        objectName: "damaged"
        width: parent.width
        visible: pads.app.upkeep.wrong.length > 0
        kind: Banner.Refused
        text: pads.app.upkeep.wrong
    }
    Banner {
        objectName: "clockDoubt"
        width: parent.width
        visible: pads.app.clock.doubt.length > 0
        kind: Banner.Caution
        text: pads.app.clock.doubt
        padText: qsTr("Clock")
        onActed: pads.app.clock.openDoubt()
    }
    Pad {
        objectName: "openSheets"
        width: parent.width
        visible: pads.open > 0
        act: true
        text: qsTr("%n open sheet(s)", "", pads.open)
        hint: qsTr("Go on where you were")
        onFired: pads.app.navigator.open(Navigator.WasHere)
    }
    Pad {
        objectName: "dayFile"
        width: parent.width
        act: pads.app.dayFile.anyUnsent && pads.app.openSheets.count === 0
        text: qsTr("Day file")
        hint: pads.app.dayFile.loaded ? pads.app.dayFile.shortText : ""
        onFired: pads.app.openDayFile()
    }
    ToSettlePad { width: parent.width; app: pads.app }
    Pad {
        objectName: "flight"
        width: parent.width
        act: pads.app.openFlights.count > 0
        text: qsTr("Flight")
        hint: pads.app.openFlights.count > 0 ? qsTr("Go on: %1").arg(pads.app.openFlights.newest)
                                             : qsTr("Several barrels, tasted blind")
        onFired: pads.app.openFlight()
    }
    Pad {
        objectName: "openBench"
        width: parent.width
        // Its answers tell of scores: not while somebody tastes.
        visible: pads.app.openSheets.count === 0 && pads.app.openFlights.count === 0
        text: qsTr("Bench")
        hint: qsTr("Which barrels make the blend?")
        onFired: pads.app.openBench()
    }
    Row {
        width: parent.width
        spacing: Theme.gap

        Pad {
            objectName: "takeIn"
            width: (parent.width - Theme.gap) / 2
            small: true
            text: qsTr("Take in")
            name: qsTr("Take in a day file")
            onFired: pads.app.openTakeIn()
        }
        Pad {
            objectName: "settings"
            width: (parent.width - Theme.gap) / 2
            small: true
            text: qsTr("Settings")
            onFired: pads.app.navigator.open(Navigator.Settings)
        }
    }
    Pad {
        objectName: "calendar"
        width: parent.width
        // It tells of scores: not while somebody tastes.
        visible: pads.app.openSheets.count === 0 && pads.app.openFlights.count === 0
        small: true
        text: qsTr("When barrels are ready")
        onFired: pads.app.openCalendar()
    }
    Grid {
        id: more

        readonly property real half: (pads.width - Theme.gap) / 2

        width: parent.width
        columns: 2
        spacing: Theme.gap

        Pad {
            objectName: "lots"
            width: more.half
            small: true
            text: qsTr("Lots")
            name: qsTr("Lots: beer on its way to packages")
            onFired: pads.app.openLots()
        }
        Pad {
            objectName: "trace"
            width: more.half
            small: true
            text: qsTr("Trace")
            name: qsTr("Trace: where beer came from and where it went")
            onFired: pads.app.openTrace()
        }
        Pad {
            objectName: "reports"
            width: more.half
            small: true
            text: qsTr("Reports")
            name: qsTr("Reports: duty, losses, costs")
            onFired: pads.app.openReports()
        }
        Pad {
            objectName: "labels"
            width: more.half
            small: true
            text: qsTr("Labels")
            name: qsTr("Labels for the barrels' heads")
            onFired: pads.app.openLabels()
        }
    }
    SectionTitle {
        width: parent.width
        text: qsTr("What you did on this device")
    }
    WaitRows {
        width: parent.width
        waiting: !pads.app.today.loaded
    }
    EmptyNote {
        width: parent.width
        visible: pads.app.today.empty
        text: qsTr("No work in the cellar has been recorded on this device yet.")
    }
}
