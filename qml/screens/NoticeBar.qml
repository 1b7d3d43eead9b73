import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What was just kept, with its undo, or what went wrong.
Item {
    id: bar

    required property Notice notice

    implicitHeight: bar.notice.shown ? (bar.notice.refused ? banner.implicitHeight : undo.implicitHeight) + Theme.gap : 0
    visible: bar.notice.shown

    UndoBar {
        id: undo
        width: parent.width
        shown: bar.notice.shown && !bar.notice.refused
        undoShown: bar.notice.undoable
        text: bar.notice.text
        onUndone: bar.notice.undo()
    }
    Banner {
        id: banner
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        visible: bar.notice.shown && bar.notice.refused
        kind: Banner.Refused
        text: bar.notice.text
        padText: qsTr("Put away")
        onActed: bar.notice.clear()
    }
}
