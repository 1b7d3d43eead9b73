import QtQuick
import QtTest
import Spile.TestApp
import Spile.ViewModels

// A finger that works a sheet through, step by step.
Finger {
    id: worker

    readonly property AppViewModel app: worker.stage.test.app
    readonly property WorkViewModel work: worker.stage.test.app ? worker.stage.test.app.work : null

    // Holds a pad until it fires.
    function hold(name) {
        const item = need(name)
        tryVerify(() => item.enabled, 5000, name + " cannot be pressed: " + texts())
        bringIntoView(item)
        const touch = touchEvent(item)
        touch.press(0, item).commit()
        wait(1100)
        touch.release(0, item).commit()
        settle()
        wait(260)
    }
    function beginStep() {
        if (!worker.work.begun) {
            if (worker.work.holdToBegin) {
                hold("holdToBegin")
            } else {
                tap("begin")
            }
            verify(worker.work.begun, worker.work.error)
        }
    }
    // Ticks all off and fills in what is asked, with the first taps; `words` says which chip otherwise.
    function fillIn(words) {
        for (let i = 0; i < worker.work.ticks.length; ++i) {
            if (!worker.work.ticked[i]) {
                tap("tick" + i)
            }
        }
        const asks = worker.work.asks
        for (let row = 0; row < asks.rowCount(); ++row) {
            const name = asks.data(asks.index(row, 0), AskRows.Name)
            const kind = asks.data(asks.index(row, 0), AskRows.KindRole)
            if (kind === AskRows.Number) {
                if (asks.data(asks.index(row, 0), AskRows.Empty)) {
                    tap("more", need("number_" + name))
                }
            } else if (name === "from_lot" && words[name] === undefined) {
                continue // it may be left out, and is no name for a new one
            } else if (words[name] === undefined && kind === AskRows.Named && name !== "lot_code") {
                write("typed_" + name, name === "lot" ? "Harbour Light" : "Night Ferry")
            } else {
                tap("chip" + (words[name] ?? 0), need("words_" + name))
            }
        }
    }
    function doStep(words) {
        beginStep()
        fillIn(words)
        tryVerify(() => worker.work.canFinish, 5000, worker.work.stepName + ": " + worker.work.missing)
        tap("finish")
        compare(worker.work.error, "")
    }
    function workThrough(words) {
        for (let guard = 0; guard < 30 && worker.app.navigator.page === Navigator.Steps; ++guard) {
            if (worker.work.tastes) {
                beginStep()
                return
            }
            doStep(words)
        }
    }
    function choose(title) {
        const sheets = worker.app.sheets
        const index = sheets.titles.indexOf(title)
        verify(index >= 0, title + " is not offered: " + sheets.titles)
        tap("sheet" + index)
        compare(worker.app.navigator.page, Navigator.Steps)
        compare(worker.work.title, title)
    }
    function tasteAll() {
        tap("finish") // opens the tasting sheet
        compare(worker.app.navigator.page, Navigator.Taste)
        tap("rung5")
        while (!worker.app.tasting.last) {
            tap("next")
        }
        tap("close")
    }
    function beginWithEmptyBarrel() {
        stage.test.beginEmpty()
        stage.raise("")
        settle()
        tap("registerFirst")
        write("mark", "Rum 3")
        tap("chip2", need("spirits"))
        tap("chip4", need("sizes"))
        tap("record")
        tap("toBarrel")
        tap("work")
        compare(worker.app.navigator.page, Navigator.Sheets)
    }
    function sayWho() {
        write("newName", "Ada")
        tap("addPerson")
    }

    function choose2(title) {
        const index = worker.app.sheets.titles.indexOf(title)
        tap("sheet" + index)
        sayWho()
        tryCompare(worker.app.navigator, "page", Navigator.Steps)
    }
}
