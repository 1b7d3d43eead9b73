import QtQuick
import Spile.Components
import Spile.Theme

// A join code, to be compared or typed group by group.
Column {
    id: code

    required property string value

    spacing: Theme.tightPadding
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("Its code: %1").arg(code.value)

    Words {
        width: parent.width
        text: qsTr("Its code")
        font: Theme.label
        color: Theme.colours.secondText
        Accessible.ignored: true
    }
    Words {
        width: parent.width
        text: code.value
        font: Theme.strongBody
        Accessible.ignored: true
    }
}
