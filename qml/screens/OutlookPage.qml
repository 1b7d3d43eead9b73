pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// The outlook of one barrel: what the chances advise, the next tasting, and the course of each attribute.
Page {
    id: page

    required property AppViewModel app
    readonly property OutlookViewModel viewModel: page.app.outlook
    readonly property bool hidden: page.viewModel.hidden

    title: page.viewModel.barrelName
    subtitle: page.viewModel.beer
    backShown: true
    onBackPressed: page.app.goBack()

    AlarmList {
        width: parent.width
        alarms: page.app.barrel.alarms
    }
    Banner {
        objectName: "hidden"
        width: parent.width
        visible: page.hidden
        text: page.app.barrel.openSheetText
    }
    Banner {
        objectName: "problem"
        width: parent.width
        visible: page.viewModel.problem.length > 0
        text: page.viewModel.problem
    }
    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded && !page.hidden && page.viewModel.problem.length === 0
    }
    Words {
        objectName: "advice"
        width: parent.width
        visible: page.viewModel.loaded
        text: page.viewModel.advice
        font: Theme.strongBody
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Words {
        objectName: "learning"
        width: parent.width
        visible: page.viewModel.loaded && page.viewModel.learning
        text: qsTr("What your other barrels teach is still being read; this will change a little.")
        color: Theme.colours.secondText
    }
    Fact {
        objectName: "next"
        width: parent.width
        visible: page.viewModel.loaded
        label: qsTr("Taste next")
        value: page.viewModel.nextDate
        note: page.viewModel.nextReason
    }
    Pad {
        objectName: "windows"
        width: parent.width
        visible: page.viewModel.loaded
        act: !page.viewModel.windows
        text: qsTr("Windows")
        hint: qsTr("What this beer should taste like")
        onFired: page.app.openWindows()
    }
    Row {
        width: parent.width
        spacing: Theme.gap
        visible: page.viewModel.loaded

        Pad {
            objectName: "whatIf"
            width: (parent.width - Theme.gap) / 2
            small: true
            text: qsTr("What if?")
            onFired: page.app.openWhatIf()
        }
        Pad {
            objectName: "calendar"
            width: (parent.width - Theme.gap) / 2
            small: true
            text: qsTr("All barrels")
            name: qsTr("When all barrels are ready")
            onFired: page.app.openCalendar()
        }
    }
    SectionTitle {
        width: parent.width
        visible: page.viewModel.windows
        text: qsTr("The chance that all is inside")
    }
    OutlookChance {
        width: parent.width
        visible: page.viewModel.windows
        viewModel: page.viewModel
        otherLine: page.viewModel.past
    }
    Repeater {
        model: page.viewModel.attributes

        OutlookAttribute {
            width: parent?.width ?? 0
            viewModel: page.viewModel
        }
    }
    Words {
        objectName: "neverScored"
        width: parent.width
        visible: page.viewModel.loaded && !page.viewModel.scored
        text: qsTr("Never scored in this fill. A tasting begins the outlook.")
        color: Theme.colours.secondText
    }
    OutlookCalls {
        width: parent.width
        rows: page.viewModel.calls
    }
}
