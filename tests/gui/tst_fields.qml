import QtQuick
import QtTest
import Spile.Components
import Spile.Theme

// What is stepped, keyed and chosen.
Item {
    id: window
    width: 390
    height: 844

    Component {
        id: stepperOf
        Stepper {
            width: 354
            label: "Gravity"
            readout: "1.024"
            smallStep: "0.001"
            bigStep: "0.010"
        }
    }
    Component {
        id: keypadOf
        Keypad { width: 354; keys: ["1", "2", "3", "4", "5", "6", "7", "8", "9", "0"] }
    }
    Component {
        id: codesOf
        Keypad { columns: 6; keys: Array.from("0123456789ABCDEFGHJKMNPQRSTVWXYZ") }
    }
    Component {
        id: chipsOf
        Chips { width: 354; words: ["Vinegar", "Mould", "Cardboard"]; chosen: [false, true, false] }
    }
    SignalSpy { id: spy }
    SignalSpy { id: otherSpy }

    TestCase {
        name: "Fields"
        when: windowShown

        function init() {
            Theme.unitsPerMm = 6.04
            Theme.textScale = 1
        }
        function make(component: Component, properties): Item {
            const item = createTemporaryObject(component, window, properties)
            verify(item)
            waitForRendering(item)
            return item
        }
        function watch(item: Item, signal: string, other: string) {
            for (const each of [spy, otherSpy]) {
                each.target = null
                each.clear()
            }
            spy.signalName = signal
            spy.target = item
            otherSpy.signalName = other
            otherSpy.target = other ? item : null
        }

        function test_stepper_steps_by_one_and_ten_data() {
            return [{ tag: "lessTen", count: -10 }, { tag: "less", count: -1 }, { tag: "more", count: 1 },
                    { tag: "moreTen", count: 10 }]
        }
        function test_stepper_steps_by_one_and_ten(data) {
            const stepper = make(stepperOf, {})
            watch(stepper, "stepped", "begun")
            mouseClick(findChild(stepper, data.tag))
            compare(spy.count, 1)
            compare(spy.signalArguments[0][0], data.count)
            compare(otherSpy.count, 0)
        }
        function test_stepper_asks_where_to_begin() {
            const stepper = make(stepperOf, { empty: true })
            watch(stepper, "stepped", "begun")
            compare(findChild(stepper, "readout").text, "·")
            mouseClick(findChild(stepper, "more"))
            compare(spy.count, 0)
            compare(otherSpy.count, 1)
        }
        function test_stepper_stops_at_a_limit() {
            const stepper = make(stepperOf, { canMore: false, error: "No more than this." })
            watch(stepper, "stepped", "")
            mouseClick(findChild(stepper, "more"))
            mouseClick(findChild(stepper, "moreTen"))
            compare(spy.count, 0)
            mouseClick(findChild(stepper, "less"))
            compare(spy.count, 1)
            verify(findChild(stepper, "error").visible)
        }
        function test_stepper_is_one_row_on_a_phone_data() {
            return [{ tag: "390", width: 354 }, { tag: "360", width: 324 }]
        }
        function test_stepper_is_one_row_on_a_phone(data) {
            const stepper = make(stepperOf, { width: data.width })
            compare(findChild(stepper, "lessTen").y, findChild(stepper, "moreTen").y)
        }
        function test_keypad_types_and_erases() {
            const keypad = make(keypadOf, {})
            watch(keypad, "typed", "erased")
            mouseClick(findChild(keypad, "key7"))
            mouseClick(findChild(keypad, "key0"))
            compare(spy.signalArguments.map(all => all[0]), ["7", "0"])
            mouseClick(findChild(keypad, "erase"))
            compare(otherSpy.count, 1)
        }
        function test_keys_are_wide_enough_data() {
            return [{ tag: "360", width: 324 }, { tag: "390", width: 354 }, { tag: "600", width: 520 }]
        }
        function test_keys_are_wide_enough(data) {
            const keypad = make(codesOf, { width: data.width })
            const key = findChild(keypad, "keyZ")
            verify(key.width >= Theme.mm(9), key.width / Theme.unitsPerMm)
            verify(key.height >= Theme.rung)
            verify(key.x + key.width <= data.width)
            const inSecondRow = findChild(keypad, "key5").y > findChild(keypad, "key0").y
            compare(inSecondRow, data.width < 400, "six in a row if there is room")
        }
        function test_chips_tell_which() {
            const chips = make(chipsOf, {})
            watch(chips, "toggled", "")
            verify(findChild(chips, "chip1").chosen)
            verify(!findChild(chips, "chip0").chosen)
            mouseClick(findChild(chips, "chip2"))
            compare(spy.signalArguments[0][0], 2)
        }
        function test_chips_stand_in_one_column_when_text_is_large() {
            const chips = make(chipsOf, {})
            verify(findChild(chips, "chip1").x > 0)
            Theme.textScale = 2
            compare(findChild(chips, "chip1").x, 0)
        }
    }
}
