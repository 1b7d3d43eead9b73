import QtQuick
import Spile.Screens
import Spile.TestApp
import Spile.Theme
import Spile.ViewModels

// The app's shell on a stage of a given size, and the finger that taps its pads by name.
Item {
    id: stage

    property alias test: testApp
    property Item shell: null
    width: 390
    height: 844

    TestApp {
        id: testApp
    }
    Component {
        id: shellComponent
        Shell { anchors.fill: parent }
    }
    Binding { target: Theme; property: "unitsPerMm"; value: 6.04 }

    // Puts the app that runs now on the stage.
    function raise(standIn: url) {
        stage.lower()
        stage.shell = shellComponent.createObject(stage, { app: testApp.app, standIn: standIn })
    }
    function lower() {
        if (stage.shell) {
            stage.shell.destroy()
            stage.shell = null
        }
    }
}
