pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What a brewer needs to know, in the app itself: a list of pages, and the one that is read.
Page {
    id: page

    required property AppViewModel app
    readonly property HandbookViewModel viewModel: page.app.handbook
    readonly property bool reading: page.viewModel.current >= 0

    title: page.reading ? page.viewModel.title : qsTr("Handbook")
    backShown: true
    onBackPressed: page.app.goBack()
    onReadingChanged: page.scroller.contentY = 0

    Repeater {
        model: page.reading ? [] : page.viewModel.titles

        Pad {
            id: chapter
            required property int index
            required property string modelData
            objectName: "chapter" + chapter.index
            width: parent.width
            arrangement: Pad.Leading
            text: chapter.modelData
            onFired: page.viewModel.current = chapter.index
        }
    }
    Words {
        width: parent.width
        visible: page.reading
        text: page.viewModel.text
        textFormat: Text.MarkdownText
    }
}
