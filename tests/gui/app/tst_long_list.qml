import QtQuick
import QtTest
import Spile.TestApp

// A long list at its beginning stays there, whatever comes above its first row, and makes no rows without end: below a
// header that leaves no row in sight, too.
Item {
    id: stage
    width: 390
    height: 600

    Component {
        id: lists
        TallRows {
            id: list
            property real head: 0
            width: stage.width
            height: 520
            header: Item {
                width: list.width
                height: list.head
            }
        }
    }

    TestCase {
        name: "LongList"
        when: windowShown

        function start(head) {
            const list = createTemporaryObject(lists, stage, { head: head })
            verify(list)
            for (let i = 0; i < 50; ++i) {
                list.rows.append({ tall: 118 })
            }
            wait(50)
            list.made = 0
            return list
        }
        function heads() {
            const all = []
            for (const head of [0, 100, 400, 519, 520, 521, 575, 640, 700, 1200]) {
                all.push({ tag: head + " high", head: head })
            }
            return all
        }
        function atBeginning(list, what) {
            wait(60)
            verify(list.made < 200, what + ": " + list.made + " rows were made")
            fuzzyCompare(list.contentY, list.originY, 1, what)
            fuzzyCompare(list.headerItem.y, list.originY, 1, what)
        }
        function test_rows_come_at_the_top_data() { return heads() }
        function test_rows_come_at_the_top(data) {
            const list = start(data.head)
            atBeginning(list, "as it was opened")
            for (let i = 0; i < 6; ++i) {
                list.rows.insert(0, { tall: 60 + 40 * i })
                atBeginning(list, "row " + i)
                list.made = 0
            }
        }
        function test_rows_go_from_the_top_data() { return heads() }
        function test_rows_go_from_the_top(data) {
            const list = start(data.head)
            for (let i = 0; i < 6; ++i) {
                list.rows.remove(0)
                atBeginning(list, "row " + i)
                list.made = 0
            }
        }
        function test_the_header_grows_and_shrinks_data() { return heads() }
        function test_the_header_grows_and_shrinks(data) {
            const list = start(data.head)
            for (const more of [64, 130, -64, 700, -600]) {
                list.head = Math.max(0, data.head + more)
                atBeginning(list, "header " + list.head)
                list.rows.insert(0, { tall: 90 })
                atBeginning(list, "header " + list.head + " and a row")
                list.made = 0
            }
        }
        function test_the_list_grows_and_shrinks_data() { return heads() }
        function test_the_list_grows_and_shrinks(data) {
            const list = start(data.head)
            for (const tall of [586, 522, 479, 120, 600]) {
                list.height = tall
                list.rows.insert(0, { tall: 118 })
                atBeginning(list, "list " + tall)
                list.made = 0
            }
        }
        function test_all_at_once_data() { return heads() }
        function test_all_at_once(data) {
            const list = start(data.head)
            for (const change of [[64, 586], [-130, 522], [64, 479], [-64, 300], [400, 586], [-400, 522]]) {
                list.head = Math.max(0, list.head + change[0])
                list.rows.insert(0, { tall: 118 })
                list.height = change[1]
                atBeginning(list, "header " + list.head + ", list " + list.height)
                list.rows.insert(0, { tall: 118 })
                list.height = change[1] - 64
                list.head = list.head + 16
                list.rows.remove(49)
                atBeginning(list, "header " + list.head + ", list " + list.height)
                list.made = 0
            }
        }
        function test_a_row_leaves_sight_as_another_comes() {
            for (const tall of [30, 118, 200]) {
                const list = start(575)
                list.height = 586
                atBeginning(list, "the first row in sight")
                list.made = 0
                list.rows.insert(0, { tall: tall })
                list.height = 522
                atBeginning(list, "a row of " + tall)
                list.made = 0
                list.height = 479
                list.rows.insert(0, { tall: tall })
                atBeginning(list, "another")
            }
        }
        function test_elsewhere_it_stays_where_it_is() {
            const list = start(100)
            list.contentY = 800
            wait(50)
            const row = list.itemAt(10, list.contentY + 10)
            verify(row)
            const seen = row.mapToItem(stage, 0, 0).y
            list.rows.insert(0, { tall: 118 })
            wait(60)
            fuzzyCompare(row.mapToItem(stage, 0, 0).y, seen, 1)
        }
    }
}
