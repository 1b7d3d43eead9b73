pragma ComponentBehavior: Bound
import QtQuick
import Spile.Components
import Spile.Theme
import Spile.ViewModels

// What a brewer needs to know, in the app itself.
Page {
    id: page

    required property AppViewModel app

    title: qsTr("Handbook")
    backShown: true
    onBackPressed: page.app.goBack()

    Repeater {
        model: page.app.handbook

        Words {
            required property string modelData

            width: parent.width
            text: modelData
            textFormat: Text.MarkdownText
        }
    }
}
