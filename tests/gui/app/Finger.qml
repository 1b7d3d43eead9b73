import QtQuick
import QtTest

// A test case that works the app as a finger does: by touch on what has a name, waiting until it is answered.
TestCase {
    id: finger

    required property AppStage stage
    when: windowShown

    function cleanup() {
        stage.lower()
        stage.test.usePlainWords()
    }
    function settle() {
        tryVerify(() => stage.test.isSettled(), 20000, "the app does not come to rest")
        waitForRendering(stage, 30)
        tryVerify(() => stage.test.isSettled(), 20000)
    }
    // A visible item by its objectName; of several the first that is shown.
    function shown(name, from) {
        return seek(from ?? stage, name)
    }
    function seek(item, name) {
        if (!item.visible) {
            return null
        }
        if (item.objectName === name) {
            return item
        }
        for (let i = 0; i < item.children.length; ++i) {
            const found = seek(item.children[i], name)
            if (found) {
                return found
            }
        }
        return null
    }
    function need(name, from) {
        tryVerify(() => shown(name, from) !== null, 5000, name + " is not on the screen")
        return shown(name, from)
    }
    function tap(name, from) {
        const item = need(name, from)
        tryVerify(() => item.enabled, 5000, name + " cannot be pressed")
        tryVerify(() => isLaidOut(item), 5000, name + " does not come to rest")
        bringIntoView(item)
        const touch = touchEvent(item)
        touch.press(0, item).commit()
        wait(60)
        touch.release(0, item).commit()
        settle()
        wait(260) // the pad's own lock-out against bouncing
    }
    // Whether no item that it lies in waits to be laid out, as a banner does that has just come.
    function isLaidOut(item) {
        for (let around = item; around && around !== stage; around = around.parent) {
            if (isPolishScheduled(around)) {
                return false
            }
        }
        return true
    }
    function bringIntoView(item) {
        let scroller = item.parent
        while (scroller && scroller.contentY === undefined) {
            scroller = scroller.parent
        }
        if (scroller && scroller.contentItem) {
            const y = item.mapToItem(scroller.contentItem, 0, 0).y
            if (y < scroller.contentY || y + item.height > scroller.contentY + scroller.height) {
                scroller.contentY = Math.max(scroller.originY, Math.min(y - 20, scroller.originY + Math.max(0, scroller.contentHeight - scroller.height)))
                waitForRendering(stage, 30)
            }
        }
    }
    function write(name, text) {
        const entry = need(name)
        bringIntoView(entry)
        const field = findChild(entry, "input")
        verify(field, name + " has no field")
        field.forceActiveFocus()
        for (const letter of text) {
            keyClick(letter)
        }
        settle()
    }
    function texts() {
        return stage.test.allTexts(stage)
    }
}
