import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// How this device shows things, and whose cellar it belongs to.
Page {
    id: page

    required property AppViewModel app
    readonly property Settings viewModel: page.app.settings

    title: qsTr("Settings")
    subtitle: page.app.joining.cellarName
    backShown: true
    onBackPressed: page.app.goBack()

    SectionTitle { width: parent.width; text: qsTr("Light", "how bright the screens are") }
    Chips {
        objectName: "palettes"
        width: parent.width
        mostInARow: 3
        words: [qsTr("Dark"), qsTr("Light"), qsTr("Night, red")]
        choice: page.viewModel.palette
        onToggled: index => page.viewModel.palette = index
    }
    SectionTitle { width: parent.width; text: qsTr("Size of text: %1 %").arg(page.viewModel.textPercent) }
    Row {
        id: textSize
        width: parent.width
        spacing: Theme.gap
        readonly property real share: (width - spacing) / 2

        Pad { objectName: "smallerText"; width: textSize.share; leastHeight: Theme.rung; glyph: Glyph.Less; text: qsTr("Smaller"); onFired: page.viewModel.stepText(-1) }
        Pad { objectName: "largerText"; width: textSize.share; leastHeight: Theme.rung; glyph: Glyph.More; text: qsTr("Larger"); onFired: page.viewModel.stepText(1) }
    }
    SectionTitle { width: parent.width; text: qsTr("Units") }
    Chips {
        objectName: "units"
        width: parent.width
        words: [qsTr("Litres, °C"), qsTr("US gallons, °F")]
        choice: page.viewModel.usUnits ? 1 : 0
        onToggled: index => page.viewModel.usUnits = index === 1
    }
    SectionTitle { width: parent.width; text: qsTr("Which hand holds the phone?") }
    Chips {
        objectName: "hand"
        width: parent.width
        words: [qsTr("Right"), qsTr("Left")]
        choice: page.viewModel.leftHanded ? 1 : 0
        onToggled: index => page.viewModel.leftHanded = index === 1
    }
    SectionTitle { width: parent.width; text: qsTr("Language") }
    Chips {
        objectName: "languages"
        width: parent.width
        words: page.viewModel.languages
        choice: page.viewModel.languageIndex
        onToggled: index => page.viewModel.languageIndex = index
    }
    SectionTitle { width: parent.width; text: qsTr("Are barrels topped up here?") }
    Chips {
        objectName: "topUps"
        width: parent.width
        words: [qsTr("Never"), qsTr("Yes")]
        choice: page.viewModel.topUps ? 1 : 0
        onToggled: index => page.viewModel.topUps = index === 1
    }
    SettingsDevices {
        width: parent.width
        app: page.app
    }
    Pad {
        objectName: "handbook"
        width: parent.width
        text: qsTr("Handbook")
        onFired: page.app.openHandbook()
    }
}
