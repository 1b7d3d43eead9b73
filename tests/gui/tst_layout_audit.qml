import QtQuick
import QtTest
import Spile.Components
import Spile.Tests

// The audit is shown what it has to find.
Item {
    id: page
    width: 300
    height: 300

    LayoutAudit { id: audit }

    Component {
        id: cutText
        Text { width: 40; elide: Text.ElideRight; text: "much too long for this" }
    }
    Component {
        id: outsideText
        Text { x: 280; text: "beyond the side" }
    }
    Component {
        id: overText
        Item {
            Text { text: "one" }
            Text { x: 5; y: 3; text: "other" }
        }
    }
    Component {
        id: padText
        Pad {
            width: 100
            height: 60
            Text { x: 90; text: "out of the pad" }
        }
    }
    Component {
        id: closePads
        Item {
            Pad { y: 20; width: 120; height: 80; text: "first" }
            Pad { y: 105; width: 120; height: 80; text: "second" }
        }
    }
    Component {
        id: lyingPads
        Item {
            Pad { width: 120; height: 80; text: "first" }
            Pad { y: 60; width: 120; height: 80; text: "" }
        }
    }
    Component {
        id: scrolled
        Flickable {
            width: 200
            height: 100
            clip: true
            contentHeight: 600
            Text { y: 500; text: "far below" }
        }
    }
    Component {
        id: scrolledOver
        Item {
            Flickable {
                width: 200
                height: 100
                clip: true
                contentHeight: 600
                Text { y: 110; text: "far below" }
            }
            Text { y: 110; text: "footer" }
        }
    }
    Component {
        id: scrolledWide
        Flickable {
            width: 60
            height: 100
            clip: true
            Text { text: "wider than what scrolls" }
        }
    }
    Component {
        id: hiddenText
        Item {
            Text { text: "one" }
            Text { text: "hidden"; visible: false }
            Text { text: "" }
        }
    }

    TestCase {
        name: "LayoutAudit"
        when: windowShown

        function init() {
            audit.leastPadHeight = 0
            audit.leastPadWidth = 0
            audit.leastGap = 0
        }
        function findingsOf(component: Component): list<string> {
            const item = createTemporaryObject(component, page)
            verify(item)
            waitForRendering(item)
            return audit.findings(page)
        }

        function test_finds_data() {
            return [{ tag: "cut text", component: cutText, what: /is cut/ },
                    { tag: "text outside", component: outsideText, what: /runs out of the page/ },
                    { tag: "text over text", component: overText, what: /lies over/ },
                    { tag: "text outside of its pad", component: padText, what: /runs out of its pad/ },
                    { tag: "pads over each other", component: lyingPads, what: /-20 apart/ },
                    { tag: "text wider than what scrolls", component: scrolledWide, what: /wider than what scrolls/ }]
        }
        function test_finds(data) {
            const found = findingsOf(data.component)
            compare(found.length, 1, found.join("; "))
            verify(data.what.test(found[0]), found[0])
        }
        function test_finds_pads_that_are_too_close() {
            compare(findingsOf(closePads).length, 0)
            audit.leastGap = 12
            const found = audit.findings(page)
            compare(found, ["\"first\" and \"second\" are 5 apart"])
        }
        function test_finds_pads_that_are_too_small() {
            findingsOf(closePads)
            audit.leastPadHeight = 90
            compare(audit.findings(page).length, 2)
            audit.leastPadHeight = 0
            audit.leastPadWidth = 121
            compare(audit.findings(page).length, 2)
        }
        function test_lets_be_data() {
            return [{ tag: "what scrolls", component: scrolled },
                    { tag: "what is scrolled away", component: scrolledOver },
                    { tag: "what is not seen", component: hiddenText }]
        }
        function test_lets_be(data) {
            compare(findingsOf(data.component), [])
        }
    }
}
