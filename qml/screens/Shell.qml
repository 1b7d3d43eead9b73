import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// Everything in the window: one page on a phone; list, page and history side by side where there is room.
FocusScope {
    id: shell

    required property AppViewModel app
    // A picture, folder or video in the camera's place; empty: the camera.
    property url standIn
    readonly property bool ready: shell.app.stage === AppViewModel.Ready
    readonly property bool twoColumns: shell.ready && shell.width >= Theme.twoColumnsFrom
    readonly property bool threeColumns: shell.ready && shell.width >= Theme.threeColumnsFrom
    // Where two columns just fit, the page gets the larger part.
    readonly property real listWidth: shell.threeColumns ? Theme.listColumn : Math.round(shell.width * 0.41)
    // While a flight is tasted no list and no history stands beside the page.
    readonly property bool blind: shell.app.blind
    readonly property Navigator navigator: shell.app.navigator
    // What is of no single barrel has the room of the history as well.
    readonly property bool historyShown: shell.threeColumns && shell.navigator.besideHistory

    LayoutMirroring.childrenInherit: true

    Binding { target: Theme; property: "palette"; value: shell.app.settings.palette }
    Binding { target: Theme; property: "textScale"; value: shell.app.settings.textScale }
    Binding { target: Theme; property: "pads"; value: shell.padsFor(shell.TouchJudge.wet, shell.height, shell.threeColumns) }

    Shortcut {
        sequences: ["Back", "Escape", "Alt+Left"]
        enabled: shell.navigator.canGoBack // else the system may leave the app
        onActivated: shell.app.goBack()
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.colours.ground0
    }
    PageLoader {
        id: list
        objectName: "list"
        width: shell.listWidth
        anchors { left: parent.left; top: parent.top; bottom: notice.top }
        app: shell.app
        standIn: shell.standIn
        shown: shell.twoColumns && !shell.blind
        page: shell.navigator.listPage
    }
    PartLoader {
        anchors.fill: list
        app: shell.app
        shown: shell.twoColumns && shell.blind
        file: "BlindNote.qml"
    }
    PageLoader {
        id: main
        objectName: "main"
        anchors {
            left: shell.twoColumns ? list.right : parent.left
            right: shell.threeColumns ? history.left : parent.right
            top: parent.top
            bottom: shell.threeColumns ? parent.bottom : notice.top
        }
        focus: true
        app: shell.app
        standIn: shell.standIn
        shown: shell.ready && (!shell.twoColumns || shell.navigator.detailShown)
        page: shell.navigator.page
    }
    PartLoader {
        objectName: "choose"
        anchors.fill: main
        app: shell.app
        shown: shell.twoColumns && !shell.navigator.detailShown
        file: "ChoosePage.qml"
    }
    PartLoader {
        id: history
        objectName: "history"
        width: shell.historyShown ? (shell.width - shell.listWidth) * 0.45 : 0
        anchors { right: parent.right; top: parent.top; bottom: parent.bottom }
        app: shell.app
        shown: shell.historyShown && !shell.blind
        file: "HistoryColumn.qml"
    }
    PartLoader {
        objectName: "beforeReady"
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: notice.top }
        app: shell.app
        shown: shell.app.stage === AppViewModel.FirstRun || shell.app.stage === AppViewModel.Broken
        file: shell.app.stage === AppViewModel.Broken ? "BrokenPage.qml" : "FirstRunPage.qml"
    }
    PartLoader {
        objectName: "opening"
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: notice.top }
        app: shell.app
        shown: shell.app.stage === AppViewModel.Opening && shell.app.broughtUp >= 0
        file: "OpeningPage.qml"
    }
    NoticeBar {
        id: notice
        objectName: "notice"
        anchors { left: parent.left; bottom: bar.top }
        width: bar.width
        notice: shell.app.notice
    }
    PadBar {
        id: bar
        objectName: "bar"
        anchors { left: parent.left; bottom: parent.bottom }
        width: shell.threeColumns ? shell.listWidth : parent.width
        height: visible ? implicitHeight : 0
        visible: shell.ready && (shell.twoColumns || !shell.navigator.canGoBack)
        labels: [qsTr("Due"), qsTr("Scan"), qsTr("Today")]
        glyphs: [Glyph.Due, Glyph.Scan, Glyph.Today]
        current: shell.navigator.root
        onChosen: index => shell.navigator.go(index)
    }
    PartLoader {
        objectName: "call"
        anchors.fill: parent
        app: shell.app
        shown: shell.ready && shell.app.openWork.call.length > 0
        file: "CallBar.qml"
    }

    function padsFor(wet: bool, height: real, desk: bool): int {
        return wet ? Theme.Wet : desk ? Theme.Desk : height < Theme.lowWindow ? Theme.Low : Theme.Usual
    }
}
