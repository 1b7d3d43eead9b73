#pragma once

#include "core/units/checks.hpp"

#include <limits>

/// The checks that several headers of this folder share. `subject` has the unit of the limits.
namespace spile::gas {

inline constexpr double unbounded = std::numeric_limits<double>::infinity();

/// Gas and rooms: 0 to 50 °C.
[[nodiscard]] inline Result<void> needGasTemperature(Temperature t)
{
    return needCelsiusBetween("temperature_c", t, 0, 50);
}

[[nodiscard]] inline Result<void> needTime(Duration time)
{
    return needBetween("time_s", time.si(), 0, 1e10);
}

[[nodiscard]] inline Result<void> needVessel(Volume vessel)
{
    return needBetween("vessel_l", inLitres(vessel), 0.1, 1e6);
}

}  // namespace spile::gas
