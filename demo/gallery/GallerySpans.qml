import QtQuick
import Spile.Components
import Spile.Theme

Page {
    id: page

    title: "Spans"
    subtitle: "A course that is read, and spans of time"
    backShown: true

    Chart {
        objectName: "read"
        width: parent.width
        plotHeight: Theme.mm(32)
        range: Qt.rect(0, 1, 300, 8)
        firstLine: [Qt.point(0, 1.5), Qt.point(60, 3.2), Qt.point(120, 4.5), Qt.point(200, 5.6), Qt.point(300, 6.2)]
        secondLine: [Qt.point(0, 4.5), Qt.point(300, 4.5), Qt.point(300, 6.5), Qt.point(0, 6.5), Qt.point(0, 4.5)]
        markers: [Qt.point(30, 2), Qt.point(90, 4)]
        secondMarkers: [Qt.point(30, 3), Qt.point(90, 4.6)]
        thirdMarkers: [Qt.point(90, 8)]
        ringed: [Qt.point(90, 8)]
        markersWord: "Ada"
        secondMarkersWord: "Kim"
        thirdMarkersWord: "others"
        ringedWord: "does not fit"
        secondWord: "window"
        readable: true
        reader: 180
        description: "Oak rises"
    }
    SpanRow {
        width: parent.width
        title: "Rum 3"
        best: "3 Oct to 12 Dec: 7 in 10"
        contents: "Night Ferry"
        next: "Taste on 14 Sep"
        from: 0.3
        to: 0.5
        mark: 0.2
        now: 0.05
        places: [0.25, 0.5, 0.75]
    }
    SpanRow {
        width: parent.width
        title: "Rye 2"
        best: "No windows yet"
        contents: "Old Foundry"
        next: ""
        now: 0.05
        places: [0.25, 0.5, 0.75]
    }
}
