import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    title: "Outlook"
    subtitle: "Rum 3, vanilla"
    backShown: true

    Chart {
        objectName: "chart"
        width: parent.width
        range: Qt.rect(0, 1, 300, 8)
        markers: [Qt.point(10, 2), Qt.point(60, 3), Qt.point(110, 4), Qt.point(150, 5)]
        firstLine: page.course(0)
        bandLower: page.course(-0.5)
        bandUpper: page.course(0.5)
        secondLine: [Qt.point(0, 6.5), Qt.point(300, 6.5)]
        xWords: ["Oct", "Dec", "Feb", "Apr", "Jun", "Aug"]
        xPlaces: [0, 60, 120, 180, 240, 300]
        yWords: ["none", "slight", "clear", "strong", "dominant"]
        yPlaces: [1, 3, 5, 7, 9]
        firstWord: "outlook"
        secondWord: "where it should be"
        bandWord: "4 of 5 will lie here"
        description: "Vanilla rises from slight in October to strong in June"
    }

    // A course that slows down, with a range that widens away from what was tasted.
    function course(side: real) {
        return Array.from({ length: 61 }, (_, i) => {
            const day = 5 * i
            return Qt.point(day, 1.5 + 6 * (1 - Math.exp(-day / 180)) + side * (1 + Math.max(0, day - 150) / 60))
        })
    }
}
