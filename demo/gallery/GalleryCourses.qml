import QtQuick
import Spile.Components
import Spile.Theme

Page {
    title: "Courses"
    backShown: true

    SectionTitle { width: parent.width; text: "Three courses, one with a gap" }
    Chart {
        width: parent.width
        plotHeight: Theme.mm(25)
        range: Qt.rect(0, 0, 4, 10)
        firstLine: [Qt.point(0, 2), Qt.point(1, 4), Qt.point(2, 5), Qt.point(3, 7), Qt.point(4, 8)]
        secondLine: [Qt.point(0, 6), Qt.point(1, 5), Qt.point(2, NaN), Qt.point(3, 3), Qt.point(4, 3)]
        thirdLine: [Qt.point(0, 1), Qt.point(1, 1.5), Qt.point(2, 1.2), Qt.point(3, 2.2), Qt.point(4, 1)]
        firstWord: "vanilla"
        secondWord: "char"
        thirdWord: "sour"
    }
    SectionTitle { width: parent.width; text: "Nothing yet" }
    Chart { width: parent.width; plotHeight: Theme.mm(10); range: Qt.rect(0, 0, 1, 1) }
}
