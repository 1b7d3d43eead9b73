#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

#include <cstdint>
#include <string_view>

/// Scaled integers are how quantities stand in entries and in SQL; the unit is in the field's name.
namespace spile::inline units {

/// Return `value` rounded to the nearest integer (halves away from zero).
///
/// Errors    NotFinite for NaN and infinities; OutOfRange beyond +-2^53. `subject` is `field`.
[[nodiscard]] Result<std::int64_t> toScaled(double value, std::string_view field);

[[nodiscard]] inline Result<std::int64_t> toMl(Volume v)
{
    return toScaled(inMillilitres(v), "volume_ml");
}
[[nodiscard]] inline Result<std::int64_t> toMilliCelsius(Temperature t)
{
    return toScaled(inCelsius(t) * 1e3, "temp_mc");
}
[[nodiscard]] inline Result<std::int64_t> toGrams(Mass m) { return toScaled(inGrams(m), "mass_g"); }

[[nodiscard]] constexpr Volume volumeFromMl(std::int64_t ml)
{
    return millilitres(static_cast<double>(ml));
}
[[nodiscard]] constexpr Temperature temperatureFromMilliCelsius(std::int64_t mc)
{
    return celsius(static_cast<double>(mc) / 1e3);
}
[[nodiscard]] constexpr Mass massFromGrams(std::int64_t g) { return grams(static_cast<double>(g)); }

}  // namespace spile::inline units
