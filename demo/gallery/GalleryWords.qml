import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    title: "Words"
    backShown: true

    TextEntry { width: parent.width; label: "Mark"; text: "Rum 3" }
    TextEntry { width: parent.width; label: "Place"; placeholder: "Room, rack and tier" }
    TextEntry {
        width: parent.width
        label: "Tare weight, kg"
        text: "4O"
        error: "That is not a number."
    }
    TextEntry {
        width: parent.width
        lines: 3
        label: "Note"
        text: "Opens with dark cherry; the oak comes late and stays. The rum is there, but behind the malt."
    }
}
