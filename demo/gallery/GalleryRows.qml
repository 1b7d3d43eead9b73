import QtQuick
import Spile.Components
import Spile.Theme

Page {
    title: "Due"
    subtitle: "2 overdue, 1 due today"

    ListRow {
        width: parent.width
        title: "Rum 3"
        code: "7K2-QFM"
        standing: NotchEdge.Overdue
        standingWord: "9 days over"
        firstLine: "Taste"
        secondLine: "Night Ferry · Jamaican rum · Room 2, rack B"
    }
    ListRow {
        width: parent.width
        title: "Bourbon 11"
        code: "7K2-3XD"
        standing: NotchEdge.Due
        standingWord: "Today"
        firstLine: "Top up"
        secondLine: "Old Foundry · bourbon · Room 1"
    }
    ListRow {
        width: parent.width
        title: "Rye 2"
        code: "7K2-9AV"
        standing: NotchEdge.Soon
        standingWord: "In 3 days"
        firstLine: "Taste"
        secondLine: "Old Foundry · rye whiskey · Room 1"
    }
    ListRow {
        width: parent.width
        title: "Rum 4"
        code: "7K2-B5R"
        standingWord: "Resting"
        firstLine: "until the middle of March"
    }
    ListRow {
        width: parent.width
        title: "Brandy 1"
        code: "7K2-T8H"
        standing: NotchEdge.Held
        standingWord: "Held back"
        firstLine: "a leak at the chime"
    }
}
