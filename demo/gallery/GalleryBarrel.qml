import QtQuick
import Spile.Components
import Spile.Theme

Page {
    title: "Rum 3"
    subtitle: "7K2-QFM"
    backShown: true
    who: "Marguerite"
    footer: Pad {
        width: parent.width
        height: Math.max(implicitHeight, Theme.main)
        act: true
        text: "Draw a sample"
        hint: "Taste, 9 days over"
    }

    HeadPicture {
        objectName: "head"
        anchors.horizontalCenter: parent.horizontalCenter
        level: 0.86
        outlookLevel: 0.74
        description: "Rum 3 holds 182 litres"
    }
    Fact { width: parent.width; label: "Holds"; value: "Night Ferry, batch 12"; note: "first beer after the rum" }
    Fact { width: parent.width; label: "Level"; value: "182 L"; note: "gauged Tue 3 Oct" }
    Fact { width: parent.width; label: "Place"; value: "Room 2, rack B" }
}
