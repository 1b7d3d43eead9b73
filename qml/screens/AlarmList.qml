pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// Alarms about a barrel: what was seen, and what to check.
Column {
    id: list

    required property AlarmRows alarms

    spacing: Theme.gap
    visible: alarm.count > 0

    Repeater {
        id: alarm
        model: list.alarms

        Banner {
            id: banner
            required property int index
            required property string said
            required property string beside
            objectName: "alarm" + banner.index
            width: list.width
            kind: Banner.Caution
            text: Array.of(banner.said, banner.beside).filter(part => part.length > 0).join(" ")
        }
    }
}
