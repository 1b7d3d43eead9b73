import QtQuick
import Spile.Theme

// Text as it is everywhere: wrapped and never cut, and never read as markup, since people type it.
Text {
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    font: Theme.body
    color: Theme.colours.text
}
