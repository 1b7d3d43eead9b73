pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Screens
import Spile.Theme
import Spile.ViewModels

// All lots, the newest first.
Page {
    id: page

    required property AppViewModel app
    readonly property LotsViewModel viewModel: page.app.lots

    title: qsTr("Lots")
    subtitle: qsTr("Beer out of barrels, on its way to packages")
    backShown: true
    scroller: rows
    onBackPressed: page.app.goBack()
    beside: Pad {
        objectName: "newLot"
        width: parent.width
        leastHeight: Theme.rung
        small: true
        glyph: Glyph.More
        text: qsTr("New lot")
        onFired: page.app.newLot()
    }

    LongList {
        id: rows
        objectName: "rows"
        model: page.viewModel.lots
        onMoreWanted: page.viewModel.more()

        delegate: ListRow {
            id: row

            required property int index
            required property string lotId
            required property string leftText
            required property string detail
            required property string heldWord

            objectName: "row" + row.index
            width: rows.width
            firstLine: row.leftText
            secondLine: row.detail
            standing: row.heldWord.length > 0 ? NotchEdge.Held : NotchEdge.Resting
            standingWord: row.heldWord
            onOpened: page.app.openLot(row.lotId)
        }
    }
    WaitRows {
        width: parent.width
        waiting: !page.viewModel.loaded
    }
    EmptyNote {
        objectName: "empty"
        width: parent.width
        visible: page.viewModel.empty
        text: qsTr("There is no lot yet. A lot is what barrels are emptied into: a tank, a blend, one day's bottling.")
    }
}
