import QtQuick
import Spile.ViewModels

// A part of the shell that not every start needs: its file is read when it is shown.
Loader {
    id: loader

    required property AppViewModel app
    required property bool shown
    required property string file

    onShownChanged: loader.show()
    onFileChanged: loader.show()
    Component.onCompleted: loader.show()

    function show() {
        loader.setSource(loader.shown ? loader.file : "", { app: loader.app })
    }
}
