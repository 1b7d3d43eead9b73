pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// One answer of the bench: how sure it is and what it costs.
Column {
    id: part

    required property BenchViewModel viewModel

    spacing: Theme.gap

    SectionTitle {
        objectName: "openTitle"
        width: parent.width
        text: part.viewModel.openTitle
    }
    Words {
        width: parent.width
        visible: text.length > 0
        text: part.viewModel.openChance
        font: Theme.strongBody
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Pad {
        objectName: "pick"
        width: parent.width
        checkable: true
        enabled: part.viewModel.canPick
        chosen: part.viewModel.openPicked
        text: qsTr("Pour it")
        hint: part.viewModel.openPicked ? qsTr("It is one of the glasses") : qsTr("A glass of 100 mL beside others")
        onFired: part.viewModel.pick()
    }
    Repeater {
        model: part.viewModel.levels

        Column {
            id: level
            required property int index
            required property string title
            required property string value
            required property string note
            required property real from
            required property real to
            required property real mark
            required property list<real> places
            width: part.width
            spacing: Theme.padding

            Fact {
                objectName: "level" + level.index
                width: level.width
                label: level.title
                value: level.value
                note: level.note
            }
            SpanBar {
                width: level.width
                from: level.from
                to: level.to
                mark: level.mark
                places: level.places
            }
        }
    }
    Words {
        width: parent.width
        text: qsTr("The bars: 8 in 10 lie there, from 1 to 9 on the ladder; the thin lines are the windows.")
        font: Theme.label
        color: Theme.colours.secondText
    }
    Repeater {
        model: part.viewModel.costs

        Fact {
            id: cost
            required property int index
            required property string title
            required value
            required note
            objectName: "cost" + cost.index
            width: part.width
            label: cost.title
        }
    }
}
