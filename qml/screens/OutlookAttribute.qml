import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The course of one attribute: where it stands, its chart, and what the reader's line says.
Column {
    id: attribute

    required property OutlookViewModel viewModel
    required property int index
    required property string name
    required property string now
    required property string windowText
    required property string note
    required property string spoken
    required property list<point> lower
    required property list<point> upper
    required property list<point> middle
    required property list<point> windowBox
    required property list<point> first
    required property list<point> second
    required property list<point> third
    required property list<point> doubtful
    required property string firstName
    required property string secondName
    required property string thirdName

    spacing: Theme.gap

    SectionTitle {
        width: parent.width
        text: attribute.name
    }
    Fact {
        width: parent.width
        label: qsTr("Now")
        value: attribute.now
        note: attribute.windowText
    }
    Words {
        objectName: "note" + attribute.index
        width: parent.width
        visible: text.length > 0
        text: attribute.note
        color: Theme.colours.secondText
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Chart {
        objectName: "course" + attribute.index
        width: parent.width
        range: attribute.viewModel.scoreRange
        xWords: attribute.viewModel.months
        xPlaces: attribute.viewModel.monthPlaces
        yWords: attribute.viewModel.rungs
        yPlaces: attribute.viewModel.rungPlaces
        firstLine: attribute.middle
        firstWord: qsTr("middle")
        secondLine: attribute.windowBox
        secondWord: attribute.windowBox.length > 0 ? qsTr("window") : ""
        thirdLine: attribute.viewModel.nowInScores
        thirdWord: qsTr("now")
        bandLower: attribute.lower
        bandUpper: attribute.upper
        bandWord: qsTr("9 in 10 lie here")
        markers: attribute.first
        markersWord: attribute.firstName
        secondMarkers: attribute.second
        secondMarkersWord: attribute.secondName
        thirdMarkers: attribute.third
        thirdMarkersWord: attribute.thirdName
        ringed: attribute.doubtful
        ringedWord: attribute.doubtful.length > 0 ? qsTr("does not fit") : ""
        description: attribute.spoken
        readable: true
        reader: attribute.viewModel.reader
        onRead: day => attribute.viewModel.readAt(day)
    }
    Words {
        objectName: "read" + attribute.index
        width: parent.width
        text: attribute.viewModel.attributesRead[attribute.index] ?? ""
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
