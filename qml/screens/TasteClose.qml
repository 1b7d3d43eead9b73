import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// The last step of a sheet: the colour's photo, and what closing means.
Column {
    id: part

    required property AppViewModel app
    readonly property TastingViewModel viewModel: part.app.tasting

    spacing: Theme.gap * 2

    Text {
        width: parent.width
        text: part.viewModel.summary
        wrapMode: Text.Wrap
        color: Theme.colours.text
        font: Theme.strongBody
    }
    Pad {
        objectName: "photo"
        width: parent.width
        glyph: Glyph.Photo
        text: qsTr("Photograph the colour")
        hint: part.viewModel.photos > 0 ? qsTr("%n photo(s) on this sheet", "", part.viewModel.photos) : ""
        onFired: part.app.photographForSheet()
    }
    Text {
        width: parent.width
        text: part.viewModel.blind ? qsTr("A closed sheet cannot be written on any more. Which barrel it is, you see after your last glass.")
                                   : qsTr("A closed sheet cannot be written on any more. Then you see how it compares with earlier ones.")
        wrapMode: Text.Wrap
        color: Theme.colours.secondText
        font: Theme.body
    }
    HoldPad {
        objectName: "discard"
        width: parent.width
        text: qsTr("Throw this sheet away")
        hint: qsTr("Hold to do it: it cannot be taken back")
        onHeld: part.viewModel.discard()
    }
}
