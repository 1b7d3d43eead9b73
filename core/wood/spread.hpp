#pragma once

#include "core/units/units.hpp"

#include <cmath>

/// What is known of a quantity that varies from barrel to barrel.
namespace spile::wood {

/// Ten in a hundred lie below `low`, half below `median`, ten in a hundred above `high`.
template <class T>
struct SpreadOf {
    T low{};
    T median{};
    T high{};

    friend constexpr bool operator==(const SpreadOf&, const SpreadOf&) = default;
};

using Spread = SpreadOf<double>;
using VolumeSpread = SpreadOf<Volume>;
using MassSpread = SpreadOf<Mass>;

/// Standard deviations from the middle to either end of a spread, in a normal distribution.
inline constexpr double spreadReach = 1.2815515655446004;

[[nodiscard]] constexpr VolumeSpread operator*(double k, const VolumeSpread& v)
{
    return {k * v.low, k * v.median, k * v.high};
}

/// One standard deviation of a spread that is taken as normal.
[[nodiscard]] constexpr Volume deviation(const VolumeSpread& v)
{
    return (0.5 / spreadReach) * (v.high - v.low);
}

}  // namespace spile::wood
