pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The work sheets that suit this barrel as it is.
Page {
    id: page

    required property AppViewModel app
    readonly property SheetsViewModel viewModel: page.app.sheets

    title: qsTr("Work sheets")
    subtitle: page.viewModel.barrelName
    backShown: true
    onBackPressed: page.app.goBack()

    Words {
        width: parent.width
        text: qsTr("One step at a time; what can hurt stands before its step. Local rules and licensed practice come first.")
        color: Theme.colours.secondText
    }
    Repeater {
        model: page.viewModel.titles

        Pad {
            id: sheet
            required property int index
            required property string modelData
            objectName: "sheet" + sheet.index
            width: parent.width
            act: sheet.index === page.viewModel.next
            text: sheet.modelData
            hint: page.viewModel.hints[sheet.index] ?? ""
            onFired: page.viewModel.choose(sheet.index)
        }
    }
}
