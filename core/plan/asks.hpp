#pragma once

#include "core/base/result.hpp"

#include <cstdint>
#include <span>
#include <string_view>

/// What the steps of work sheets ask for. A number is kept as the integer that its name says
/// ("volume_ml"), as in the records; a choice as its word.
namespace spile::plan {

/// How a number is shown and stepped in one of the two systems of units.
struct Scale {
    std::string_view unit;  // the symbol beside it; empty: none
    double storedPerUnit = 1;
    double offset = 0;  // stored = (shown - offset) * storedPerUnit; for degrees Fahrenheit
    double step = 1;    // of the small pads, in what is shown; the large ones are ten
    int decimals = 0;
};

enum class AskKind : std::uint8_t {
    Number,
    Words,  ///< one of the words
    Batch,  ///< a beer that is known, or a new one's name
    Lot,    ///< the same of a lot
    Code,   ///< a lot code: the one that is offered, or another
};

struct AskSpec {
    std::string_view name;
    AskKind kind = AskKind::Number;
    std::int64_t least = 0, most = 0;  // of the stored integer
    std::int64_t usual = 0;            // where a stepper begins if nothing better is known
    Scale metric = {}, us = {};
    std::span<const std::string_view> words = {};
    bool remembered = false;  // what was filled in last on this device is offered again
    bool optional = false;    // the step may be done without it
};

/// Return the ask with that name; none if there is none.
[[nodiscard]] const AskSpec* findAsk(std::string_view name);
[[nodiscard]] std::span<const AskSpec> allAsks();

/// Check what was filled in: the number within its range.
///
/// Errors    OutOfRange, naming the ask, the value and the range in its stored unit; NotFound for
///           an ask that there is not.
[[nodiscard]] Result<void> checkAsk(std::string_view name, std::int64_t stored);

/// The number as it is shown on `scale`, and back, rounded to the scale's steps from zero.
[[nodiscard]] double shown(std::int64_t stored, const Scale& scale);
[[nodiscard]] std::int64_t stored(double shown, const Scale& scale);

}  // namespace spile::plan
