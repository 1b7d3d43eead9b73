import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// The outlook by touch: advice, the reader's line, what if, the calendar; and nothing of it while a sheet is open.
AppStage {
    id: stage

    readonly property AppViewModel app: stage.test.app
    readonly property OutlookViewModel outlook: stage.test.app ? stage.test.app.outlook : null

    Finger {
        name: "Outlook"
        stage: stage

        property string barrelId

        function init() {
            stage.width = 390
            stage.height = 844
            stage.test.beginWithBarrels(3, 4)
            stage.raise("")
            settle()
            stage.app.people.choose(0)
            settle()
            barrelId = stage.app.due.barrels.data(stage.app.due.barrels.index(0, 0), Qt.UserRole)
        }
        function openOutlook() {
            stage.app.openBarrel(barrelId)
            settle()
            tap("openOutlook")
            tryCompare(stage.app.navigator, "page", Navigator.Outlook)
            tryVerify(() => stage.outlook.loaded, 20000, "no outlook comes")
            settle()
        }
        function give(low, high) {
            stage.test.giveWindow("vanilla", low, high)
            settle()
        }
        function touchAt(item, share) {
            bringIntoView(item)
            const touch = touchEvent(item)
            touch.press(0, item, item.width * share, item.height / 2).commit()
            wait(60)
            touch.release(0, item, item.width * share, item.height / 2).commit()
            settle()
        }
        // What lies over the plot of a chart.
        function plotOf(name) {
            return findChild(need(name), "reader").parent
        }
        function learn() {
            stage.test.learnOutlooks()
            tryVerify(() => stage.test.hasLearned(), 20000, "the records are not read through")
            settle()
        }

        function test_without_windows_it_asks_for_them() {
            openOutlook()
            verify(texts().includes("No windows yet"), texts())
            verify(!stage.outlook.windows)
            verify(!shown("chances"))
            verify(need("course0").visible)
            verify(texts().includes("Ada"))
        }
        function test_with_windows_it_advises() {
            give(5, 7)
            openOutlook()
            verify(/in 10 that all is inside/.test(need("advice").text), need("advice").text)
            verify(stage.outlook.nextDate.length > 0)
            need("chances")
            verify(texts().includes("inside 5 to 7"), texts())
        }
        function test_the_line_is_read_where_it_is_touched() {
            give(5, 7)
            openOutlook()
            const before = need("read0").text
            const inNow = stage.outlook.reader
            touchAt(plotOf("course0"), 0.75)
            fuzzyCompare(stage.outlook.reader, stage.outlook.scoreRange.width * 0.75, stage.outlook.scoreRange.width / 50)
            verify(stage.outlook.reader > inNow)
            verify(need("read0").text !== before, before)
            verify(/^\d+ \w+.*: \d\.\d \(\d\.\d to \d\.\d\)/.test(need("read0").text), need("read0").text)
            verify(/ in 10/.test(need("chanceRead").text), need("chanceRead").text)
            // Where a score was given, the taster is named.
            touchAt(plotOf("course0"), stage.test.dayOfFirstScore() / stage.outlook.scoreRange.width)
            verify(/Ada scored 3/.test(need("read0").text), need("read0").text)
        }
        function test_what_if_shows_both() {
            give(5, 7)
            openOutlook()
            tap("whatIf")
            tryCompare(stage.app.navigator, "page", Navigator.WhatIf)
            const then = stage.app.whatIf
            verify(!shown("adviceThen"))
            tap("more", need("topUp"))
            tap("moreTen", need("topUp"))
            tap("moreTen", need("topUp"))
            tryVerify(() => then.adviceThen.length > 0, 20000)
            need("adviceThen")
            verify(then.insideThen.length > 0)
            const withTopUp = JSON.stringify(then.insideThen)
            tap("chip0", need("others"))
            tryVerify(() => then.insideThen.length > 0 && JSON.stringify(then.insideThen) !== withTopUp, 20000)
            need("share")
            const records = stage.test.recordCount()
            tap("reset")
            tryVerify(() => !then.anything)
            verify(!shown("adviceThen"))
            compare(stage.test.recordCount(), records)
        }
        function test_the_calendar_lists_all_and_opens_one_data() {
            return [{ tag: "phone", w: 390, h: 844 }, { tag: "desk", w: 1280, h: 800 }]
        }
        function test_the_calendar_lists_all_and_opens_one(data) {
            stage.width = data.w
            stage.height = data.h
            give(5, 7)
            learn()
            stage.app.navigator.go(Navigator.Today)
            settle()
            tap("calendar")
            tryCompare(stage.app.navigator, "page", Navigator.Calendar)
            tryVerify(() => stage.app.calendar.barrels.rowCount() === 3, 5000)
            need("foreseen2")
            verify(/ in 10|gone too far/.test(texts()), texts())
            tap("foreseen0")
            tryCompare(stage.app.navigator, "page", Navigator.Outlook)
            tryVerify(() => stage.outlook.loaded, 20000)
        }
        function test_nothing_is_seen_while_a_sheet_is_open() {
            give(5, 7)
            learn()
            openOutlook()
            stage.app.taste()
            settle()
            verify(!stage.outlook.loaded)
            stage.app.openBarrel(stage.app.barrel.barrelId)
            settle()
            verify(!shown("openOutlook"), "the pad is there while a sheet is open")
            stage.app.openCalendar()
            settle()
            stage.app.openOutlookOf(stage.app.barrel.barrelId)
            settle()
            verify(!stage.outlook.loaded)
            need("hidden")
            verify(!shown("advice") && !shown("chances") && !shown("course0"))
            stage.app.tasting.close()
            settle()
            stage.app.openOutlook()
            settle()
            tryVerify(() => stage.outlook.loaded, 20000, "it comes back once the sheet is closed")
        }
        function test_a_verdict_keeps_what_the_outlook_said() {
            give(5, 7)
            learn()
            openOutlook()
            verify(!shown("call0"))
            stage.app.openRecord(RecordViewModel.Verdict)
            settle()
            stage.app.record.choice = 0
            settle()
            tap("record")
            stage.app.openOutlook()
            settle()
            tryVerify(() => shown("callBeside0") !== null, 20000)
            verify(/^Outlook that day: .* in 10 that all was inside/.test(need("callBeside0").text), need("callBeside0").text)
            verify(/^Ada: hold/.test(need("call0").text), need("call0").text)
        }
        function test_the_due_list_says_why() {
            give(5, 7)
            learn()
            stage.test.passSeconds(300 * 86400)
            stage.app.navigator.go(Navigator.Today)
            settle()
            stage.app.navigator.go(Navigator.Due)
            settle()
            const rows = stage.app.due.barrels
            const reason = rows.data(rows.index(0, 0), Qt.UserRole + 6)
            verify(/: (may decide|before it goes too far|a look again)$/.test(reason), reason + " of " + rows.rowCount())
        }
    }
}
