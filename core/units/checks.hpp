#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

#include <cmath>
#include <string_view>

/// What a formula asks of the numbers it is given, before it computes. Nothing allocates where the
/// number is good.
namespace spile::inline units {

/// The error of a number that is not finite, else that of one outside `least` to `most`.
/// The numbers stand in it with six digits.
[[nodiscard]] tl::unexpected<Error> failBetween(std::string_view name, double value, double least,
                                                double most);

/// Errors    NotFinite if `value` is NaN or infinite.
[[nodiscard]] inline Result<void> needFinite(std::string_view name, double value)
{
    if (!std::isfinite(value)) {
        return fail(ErrorCode::NotFinite, std::string(name));
    }
    return {};
}

/// Both ends are allowed; a limit may be infinite.
///
/// Errors    NotFinite; OutOfRange with the value and "least to most", "at least least" or "at
///           most most". `subject` is `name`.
[[nodiscard]] inline Result<void> needBetween(std::string_view name, double value, double least,
                                              double most)
{
    if (!std::isfinite(value) || value < least || value > most) {
        return failBetween(name, value, least, most);
    }
    return {};
}

/// The same for a temperature, with limits in degrees Celsius, so that their last digit is not lost
/// in kelvins.
[[nodiscard]] inline Result<void> needCelsiusBetween(std::string_view name, Temperature t,
                                                     double least, double most)
{
    if (!(t >= celsius(least) && t <= celsius(most))) {
        return failBetween(name, inCelsius(t), least, most);
    }
    return {};
}

/// Errors    NotFinite; OutOfRange unless `value` > 0.
[[nodiscard]] inline Result<void> needPositive(std::string_view name, double value)
{
    if (!std::isfinite(value)) {
        return fail(ErrorCode::NotFinite, std::string(name));
    }
    if (value <= 0) {
        return fail(ErrorCode::OutOfRange, std::string(name), std::to_string(value), "above 0");
    }
    return {};
}

}  // namespace spile::inline units
