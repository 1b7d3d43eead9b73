#pragma once

#include "core/cellar/queries.hpp"

namespace spile::cellar {

/// How a barrel stands, as lists and pages show it.
enum class Standing : std::uint8_t {
    Resting,  ///< nothing is due within 7 days; also an empty barrel
    Soon,     ///< due within 7 days
    Due,      ///< due now, for at most 7 days
    Overdue,  ///< due for more than 7 days
    Held,     ///< the verdict "hold" stands: what it waits for is not due yet
};

/// Return how the barrel stands at `now`. A day is 24 hours here.
[[nodiscard]] Standing standingOf(const BarrelRow& barrel, Instant now);

}  // namespace spile::cellar
