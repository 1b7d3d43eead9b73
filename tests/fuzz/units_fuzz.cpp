// Quantities as typed: any text is a finite number or an error, and a number that was read is shown
// so that it is read again as the same.
#include "core/units/parse.hpp"
#include "tests/fuzz/input.hpp"

#include <cmath>

namespace {

using namespace spile;
using fuzz::stop;

void checkShown(double value, Measurand measurand, std::string_view text)
{
    constexpr int exact = 17;
    for (const UnitSpec& unit : unitsOf(measurand)) {
        const auto shown = formatQuantity(value, measurand, unit.symbol, exact);
        if (!shown) {
            continue;  // too large for a double in a smaller unit
        }
        const auto again = parseQuantity(*shown, measurand);
        // An offset takes digits from what is near its zero; a count is shown whole.
        const double room = 1e-9 * std::abs(value) + 1e-9 * std::abs(unit.offset) + 1e-300;
        if (!again && again.error().code != ErrorCode::OutOfRange) {
            stop("shown, but not read again", *shown);
        }
        if (again && !(std::abs(*again - value) <= room)) {
            stop("read again as another number", text);
        }
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(data, data + size);
    for (int i = 0; i <= static_cast<int>(Measurand::Count); ++i) {
        const auto measurand = static_cast<Measurand>(i);
        const auto value = parseQuantity(text, measurand, "input");
        if (value && !std::isfinite(*value)) {
            stop("not finite", text);
        }
        if (!value && (value.error().subject != "input" || value.error().limit.empty())) {
            stop("an error without a name or a remedy", text);
        }
        if (value) {
            checkShown(*value, measurand, text);
        }
    }
    return 0;
}
