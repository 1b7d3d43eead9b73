import QtQuick
import Spile.Components
import Spile.Theme

// The passphrase of the day file that was just written.
Column {
    id: seal

    required property string passphrase

    spacing: Theme.tightPadding
    visible: seal.passphrase.length > 0

    SectionTitle { width: parent.width; text: qsTr("Its passphrase") }
    Words {
        objectName: "passphrase"
        width: parent.width
        text: seal.passphrase
        font: Theme.strongGlance
    }
    Words {
        width: parent.width
        text: qsTr("It alone opens the file, and it is kept nowhere: write it down now. Tell it on another way than the file goes.")
    }
}
