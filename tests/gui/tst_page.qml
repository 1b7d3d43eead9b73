pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

Item {
    id: window
    width: 390
    height: 844

    Component {
        id: pageOf
        Page {
            id: page
            property int count: 3
            width: window.width
            height: window.height
            title: "Vanilla"
            subtitle: "3 of 9"
            backShown: true
            who: "Kim"
            footer: Pad { objectName: "foot"; width: parent.width; text: "Next" }
            Repeater {
                model: page.count
                Pad {
                    required property int index
                    objectName: "pad" + index
                    width: parent ? parent.width : 0
                    text: "Pad " + index
                }
            }
        }
    }
    Component {
        id: listPage
        Page {
            width: window.width
            height: window.height
            title: "Due"
            scroller: rows
            ListView {
                id: rows
                clip: true
                model: 200
                spacing: Theme.gap
                delegate: ListRow {
                    required property int index
                    width: rows.width
                    title: "Barrel " + index
                }
            }
        }
    }
    SignalSpy { id: back; signalName: "backPressed" }
    SignalSpy { id: who; signalName: "whoPressed" }

    TestCase {
        name: "Page"
        when: windowShown

        function init() {
            Theme.unitsPerMm = 6.04
            Theme.pads = Theme.Usual
            Theme.textScale = 1
            wait(100)
        }
        function make(component: Component, properties): Page {
            const page = createTemporaryObject(component, window, properties)
            verify(page)
            waitForRendering(page)
            return page
        }
        function middle(page: Item, name: string): real {
            const item = findChild(page, name)
            return item.mapToItem(page, 0, item.height / 2).y
        }

        function test_header_pads_tell() {
            const page = make(pageOf, {})
            back.target = page
            who.target = page
            mouseClick(findChild(page, "back"))
            compare(back.count, 1)
            mouseClick(findChild(page, "who"))
            compare(who.count, 1)
        }
        function test_pads_of_the_header_are_there_only_if_asked_for() {
            const page = make(pageOf, { backShown: false, who: "" })
            verify(!findChild(page, "back").visible)
            verify(!findChild(page, "who").visible)
        }
        function test_page_pads_come_only_when_needed() {
            const page = make(pageOf, { count: 3 })
            verify(!findChild(page, "pageDown").visible)
            page.count = 20
            tryCompare(findChild(page, "pageDown"), "visible", true)
        }
        function test_page_pads_go_to_the_end_and_back() {
            const page = make(pageOf, { count: 20 })
            const down = findChild(page, "pageDown")
            const up = findChild(page, "pageUp")
            verify(!up.enabled)
            for (let i = 0; i < 20 && down.enabled; ++i) {
                wait(Theme.lockout + 20)
                mouseClick(down)
            }
            verify(!down.enabled)
            verify(page.scroller.atYEnd)
            wait(Theme.lockout + 20)
            mouseClick(up)
            verify(page.scroller.contentY < page.scroller.contentHeight - page.scroller.height)
        }
        function test_one_page_down_leaves_nothing_out() {
            const page = make(pageOf, { count: 20 })
            const shown = page.scroller.height
            mouseClick(findChild(page, "pageDown"))
            verify(page.scroller.contentY > 0 && page.scroller.contentY < shown)
        }
        function test_footer_and_page_pads_lie_below_what_scrolls() {
            const page = make(pageOf, { count: 20 })
            const end = page.scroller.mapToItem(page, 0, page.scroller.height).y
            verify(findChild(page, "pageDown").mapToItem(page, 0, 0).y >= end + Theme.gap)
            verify(middle(page, "foot") > middle(page, "pageDown"))
        }
        function test_nothing_lies_in_the_keep_out_at_the_bottom() {
            const page = make(pageOf, {})
            const foot = findChild(page, "foot")
            verify(foot.mapToItem(page, 0, foot.height).y <= page.height - Theme.keepOut)
        }
        function test_scrolls_by_touch() {
            const page = make(pageOf, { count: 20 })
            const touch = touchEvent(page.scroller)
            touch.press(0, page.scroller, 150, 400).commit()
            for (let i = 1; i <= 12; ++i) {
                touch.move(0, page.scroller, 150, 400 - i * 20).commit()
                wait(16)
            }
            touch.release(0, page.scroller, 150, 160).commit()
            tryVerify(() => page.scroller.contentY > 100)
        }
        function test_keyboard_brings_a_pad_into_view() {
            const page = make(pageOf, { count: 20 })
            const last = findChild(page, "pad19")
            last.forceActiveFocus(Qt.TabFocusReason)
            const top = last.mapToItem(page.scroller, 0, 0).y
            verify(top >= 0 && top + last.height <= page.scroller.height)
            const first = findChild(page, "pad0")
            first.forceActiveFocus(Qt.TabFocusReason)
            compare(page.scroller.contentY, 0)
        }
        function test_content_is_not_wider_than_can_be_read() {
            const page = make(pageOf, {})
            page.width = 1200
            compare(page.scroller.width, Theme.widestContent)
            page.fullWidth = true
            compare(page.scroller.width, 1200 - 2 * Theme.margin)
        }
        function test_header_is_one_line_in_a_low_window() {
            Theme.pads = Theme.Low
            const page = make(pageOf, {})
            page.height = 600
            const title = findChild(page, "title")
            const back = findChild(page, "back")
            verify(title.mapToItem(page, 0, 0).y < back.mapToItem(page, 0, back.height).y)
            verify(title.mapToItem(page, 0, 0).x >= back.mapToItem(page, back.width, 0).x)
        }
        function test_header_and_footer_scroll_if_they_leave_too_little() {
            const page = make(pageOf, {})
            const title = findChild(page, "title")
            const before = title.mapToItem(page, 0, 0).y
            page.scroller.contentY = 10
            compare(title.mapToItem(page, 0, 0).y, before)
            page.scroller.contentY = 0
            Theme.textScale = 2
            page.height = 480
            tryVerify(() => page.scroller.height > page.height / 3)
            page.scroller.contentY = 200
            verify(title.mapToItem(page, 0, 0).y < 0)
            page.height = 1200
            tryVerify(() => title.mapToItem(page, 0, 0).y > 0)
        }
        function test_a_list_takes_the_place_of_the_column() {
            const page = make(listPage, {})
            verify(page.scroller.height > 600 && page.scroller.height < window.height)
            verify(findChild(page, "pageDown").visible)
            mouseClick(findChild(page, "pageDown"))
            verify(page.scroller.contentY > 400)
            verify(page.scroller.contentY < page.scroller.height)
        }
    }
}
