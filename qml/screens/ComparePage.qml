pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// After a sheet is closed: beside earlier ones, and what the brewer would have of each attribute.
Page {
    id: page

    required property AppViewModel app
    readonly property ComparingViewModel viewModel: page.app.comparing

    title: page.viewModel.barrelName
    subtitle: page.viewModel.summary
    backShown: true
    onBackPressed: page.app.goBack()
    footer: Pad {
        objectName: "done"
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        text: qsTr("Done")
        onFired: page.app.goBack()
    }

    Repeater {
        model: page.viewModel.attributes

        Column {
            id: line

            required property int index
            required property string name
            required property string now
            required property string before
            required property int direction
            readonly property real padWidth: (width - 2 * Theme.gap) / 3

            width: parent.width
            spacing: Theme.gap / 2

            Fact {
                width: parent.width
                label: line.name
                value: line.now
                note: line.before
            }
            Row {
                width: parent.width
                spacing: Theme.gap

                Pad {
                    objectName: "more" + line.index
                    width: line.padWidth
                    small: true
                    checkable: true
                    chosen: line.direction === ComparingViewModel.More
                    text: qsTr("More")
                    name: qsTr("%1: more").arg(line.name)
                    onFired: page.viewModel.say(line.index, ComparingViewModel.More)
                }
                Pad {
                    objectName: "right" + line.index
                    width: line.padWidth
                    small: true
                    checkable: true
                    chosen: line.direction === ComparingViewModel.Right
                    text: qsTr("Right")
                    name: qsTr("%1: right").arg(line.name)
                    onFired: page.viewModel.say(line.index, ComparingViewModel.Right)
                }
                Pad {
                    objectName: "tooMuch" + line.index
                    width: line.padWidth
                    small: true
                    checkable: true
                    chosen: line.direction === ComparingViewModel.TooMuch
                    text: qsTr("Too much")
                    name: qsTr("%1: too much").arg(line.name)
                    onFired: page.viewModel.say(line.index, ComparingViewModel.TooMuch)
                }
            }
        }
    }
}
