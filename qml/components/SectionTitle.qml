import QtQuick
import Spile.Theme

// Heads a part of a page.
Words {
    topPadding: Theme.padding
    font: Theme.strongBody
    color: Theme.colours.secondText
    Accessible.role: Accessible.Heading
    Accessible.name: text
}
