import QtQuick
import Spile.Components
import Spile.ViewModels

Page {
    id: page
    required property AppViewModel app
    title: qsTr("Calculate")
    backShown: true
    onBackPressed: page.app.goBack()
}
