import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    property list<bool> chosen: [true, false, false, true, false]

    title: "Anything wrong?"
    backShown: true

    Chips {
        objectName: "chips"
        width: parent.width
        words: ["Vinegar", "Wet cardboard", "Nail polish", "Horse blanket", "Mould"]
        chosen: page.chosen
        onToggled: index => {
            const next = page.chosen.slice()
            next[index] = !next[index]
            page.chosen = next
        }
    }
}
