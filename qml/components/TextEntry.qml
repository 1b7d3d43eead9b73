import QtQuick
import Spile.Theme
import Spile.Components

// A field for words. It keeps nothing: each change is told, and `text` says what stands in it.
Column {
    id: entry

    required property string label
    property string text
    property string placeholder
    property string error
    property int lines: 1
    property int inputHints: Qt.ImhNone

    signal edited(string newText)
    signal done()

    spacing: Theme.tightPadding

    Words {
        width: parent.width
        text: entry.label
        font: Theme.label
        color: Theme.colours.secondText
        Accessible.ignored: true // the field has the name
    }
    Rectangle {
        id: field
        width: parent.width
        height: Math.max(Theme.pad, Math.ceil(Math.max(input.height, entry.lines * line.height,
                                                       sample.visible ? sample.height : 0) + 2 * Theme.padding))
        radius: Theme.corner
        color: Theme.colours.ground1
        border.width: input.activeFocus ? Theme.focusRing : Theme.outline
        border.color: input.activeFocus ? Theme.colours.focus
                    : entry.error.length > 0 ? Theme.colours.warning : Theme.colours.line

        // An edit of several lines even for one, since that wraps what does not fit instead of hiding it.
        TextEdit {
            id: input
            objectName: "input"
            anchors {
                left: parent.left
                right: parent.right
                leftMargin: Theme.padding
                rightMargin: Theme.padding
                verticalCenter: parent.verticalCenter
            }
            height: Math.max(implicitHeight, (entry.lines - 1) * line.height)
            activeFocusOnTab: true
            text: entry.text
            textFormat: TextEdit.PlainText
            wrapMode: TextEdit.Wrap
            font: Theme.body
            color: Theme.colours.text
            selectionColor: Theme.colours.act
            selectedTextColor: Theme.colours.actText
            selectByMouse: true
            inputMethodHints: entry.inputHints
            onTextChanged: entry.tell()
            Accessible.role: Accessible.EditableText
            Accessible.name: entry.label
            Accessible.description: entry.error.length > 0 ? entry.error : entry.placeholder
            Accessible.multiLine: entry.lines > 1
            Keys.onPressed: event => entry.finish(event)
        }
        Words {
            id: sample
            anchors.left: input.left
            anchors.right: input.right
            anchors.verticalCenter: entry.lines === 1 ? parent.verticalCenter : undefined
            anchors.top: entry.lines === 1 ? undefined : input.top
            visible: input.text.length === 0 && input.preeditText.length === 0
            text: entry.placeholder
            color: Theme.colours.secondText
            Accessible.ignored: true
        }
        TapHandler { onTapped: input.forceActiveFocus() }
        FontMetrics {
            id: line
            font: input.font
        }
    }
    ErrorNote { text: entry.error }

    onTextChanged: {
        if (input.text !== entry.text) {
            input.text = entry.text
        }
    }

    // Some keyboards send their Enter key as text.
    function tell() {
        if (entry.lines === 1 && input.text.includes("\n")) {
            input.text = input.text.replace(/\n/g, "")
            entry.done()
        } else if (input.text !== entry.text) {
            entry.edited(input.text)
        }
    }
    function finish(event: KeyEvent) {
        const enter = event.key === Qt.Key_Return || event.key === Qt.Key_Enter
        if (enter && (entry.lines === 1 || event.modifiers & Qt.ControlModifier)) {
            event.accepted = true
            entry.done()
        } else if (event.key === Qt.Key_Tab || event.key === Qt.Key_Backtab) {
            event.accepted = true
            input.nextItemInFocusChain(event.key === Qt.Key_Tab).forceActiveFocus(Qt.TabFocusReason)
        }
    }
}
