#pragma once

#include "core/cellar/queries.hpp"
#include "core/vessel/barrel.hpp"

namespace spile::plan {

/// Return the shape of a barrel from what is known of it: its own measures, calibrated to the full
/// volume that was measured; else the usual barrel of its size.
///
/// Errors    NotFound, subject "size_ml", if nothing of it is known; those of vessel::fullVolume().
[[nodiscard]] Result<vessel::Barrel> shapeOf(const cellar::BarrelMeasures& measures,
                                             const std::optional<Volume>& size);

}  // namespace spile::plan
