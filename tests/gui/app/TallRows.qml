pragma ComponentBehavior: Bound
import QtQuick
import Spile.Screens

// A long list of rows that are as tall as is asked for, which counts how many it makes.
LongList {
    id: list

    readonly property ListModel rows: ListModel {}
    property int made: 0

    model: list.rows
    delegate: Item {
        required property int tall
        width: list.width
        height: tall
        Component.onCompleted: {
            if (++list.made > 2000) { // else a test would never end
                list.beginning = 1e9
                list.rows.clear()
            }
        }
    }
}
