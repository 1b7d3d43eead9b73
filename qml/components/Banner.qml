import QtQuick
import Spile.Theme
import Spile.Components

// Something to know before going on. A caution and a refusal have a sign, a word and an outline of their own.
Rectangle {
    id: banner

    enum Kind { Note, Caution, Refused }

    property int kind: Banner.Note
    property string text
    property string padText

    signal acted()

    readonly property bool loud: banner.kind !== Banner.Note
    readonly property string kindWord: banner.kind === Banner.Caution ? qsTr("Caution")
                                     : banner.kind === Banner.Refused ? qsTr("Not done") : ""

    implicitWidth: Theme.listColumn
    implicitHeight: body.height + 2 * Theme.padding
    color: Theme.colours.ground1
    border.width: banner.loud ? Theme.focusRing : 0
    border.color: Theme.colours.warning

    Column {
        id: body
        anchors {
            left: parent.left
            right: parent.right
            verticalCenter: parent.verticalCenter
            leftMargin: Theme.padding
            rightMargin: Theme.padding
        }
        spacing: Theme.padding

        Column {
            width: parent.width
            spacing: Theme.tightPadding
            Row {
                spacing: Theme.padding
                visible: banner.loud
                Glyph {
                    anchors.verticalCenter: parent.verticalCenter
                    kind: banner.kind === Banner.Caution ? Glyph.Caution : Glyph.Refused
                    tint: Theme.colours.warning
                }
                Words {
                    anchors.verticalCenter: parent.verticalCenter
                    text: banner.kindWord
                    font: Theme.strongBody
                    Accessible.ignored: true
                }
            }
            Words {
                width: parent.width
                text: banner.text
                Accessible.role: Accessible.AlertMessage
                Accessible.name: banner.loud ? qsTr("%1: %2").arg(banner.kindWord).arg(banner.text) : banner.text
            }
        }
        Pad {
            objectName: "bannerPad"
            width: parent.width
            visible: banner.padText.length > 0
            text: banner.padText
            onFired: banner.acted()
        }
    }
}
