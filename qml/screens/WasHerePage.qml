pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// You were here: the sheets that are still open.
Page {
    id: page

    required property AppViewModel app
    readonly property OpenSheetsViewModel viewModel: page.app.openSheets

    title: qsTr("You were here")
    subtitle: page.viewModel.interruption
    footer: Pad {
        objectName: "putAside"
        width: parent.width
        text: qsTr("Put aside")
        hint: qsTr("It stays open; Today and the barrel's page lead back to it")
        onFired: page.app.putAside()
    }

    Repeater {
        model: page.app.openWork.work

        Column {
            id: work

            required property int index
            required property string barrel
            required property string sheet
            required property string where
            required property string when

            width: parent.width
            spacing: Theme.gap

            Fact {
                width: parent.width
                label: work.barrel
                value: qsTr("%1, %2").arg(work.sheet).arg(work.where)
                note: work.when
            }
            Pad {
                objectName: "goOnWork" + work.index
                width: parent.width
                height: Math.max(implicitHeight, Theme.main)
                act: work.index === 0
                text: qsTr("Go on with %1").arg(work.barrel)
                onFired: page.app.openWork.goOn(work.index)
            }
        }
    }
    OpenFlights {
        width: parent.width
        visible: page.app.openFlights.interrupted > 0
        viewModel: page.app.openFlights
    }
    Repeater {
        model: page.viewModel.sheets

        Column {
            id: sheet

            required property int index
            required property string barrel
            required property string taster
            required property string where
            required property string when

            width: parent.width
            spacing: Theme.gap

            Fact {
                width: parent.width
                label: sheet.barrel
                value: sheet.where
                note: qsTr("%1, %2").arg(sheet.taster).arg(sheet.when)
            }
            Pad {
                objectName: "goOn" + sheet.index
                width: parent.width
                height: Math.max(implicitHeight, Theme.main)
                act: sheet.index === 0 && page.app.openWork.count === 0
                text: qsTr("Go on with %1").arg(sheet.barrel)
                onFired: page.viewModel.goOn(sheet.index)
            }
        }
    }
}
