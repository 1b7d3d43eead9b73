import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The chance over time that all windowed attributes are inside together, and what the reader's line says.
Column {
    id: chance

    required property OutlookViewModel viewModel
    property list<point> otherLine // beside it, dashed, and what each is called
    property string insideWord: qsTr("all inside")
    property string otherWord: qsTr("something gone too far")

    spacing: Theme.gap

    Chart {
        objectName: "chances"
        width: parent.width
        range: chance.viewModel.chanceRange
        xWords: chance.viewModel.months
        xPlaces: chance.viewModel.monthPlaces
        yWords: chance.viewModel.chanceWords
        yPlaces: chance.viewModel.chancePlaces
        firstLine: chance.viewModel.inside
        firstWord: chance.insideWord
        secondLine: chance.otherLine
        secondWord: chance.otherWord
        bandLower: chance.viewModel.bestLower
        bandUpper: chance.viewModel.bestUpper
        bandWord: qsTr("best")
        description: chance.viewModel.chanceSpoken
        readable: true
        reader: chance.viewModel.reader
        onRead: day => chance.viewModel.readAt(day)
    }
    Words {
        objectName: "chanceRead"
        width: parent.width
        text: chance.viewModel.chanceRead
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
