#pragma once

#include "core/base/result.hpp"

/// How high liquid stands in a lying cylinder. It stands for a barrel on its side until the shapes
/// of real barrels, which are wider in the middle, take its place.
namespace spile::vessel {

/// Return the fraction of the volume that is filled when the liquid stands at `level`, the depth as
/// a fraction of the diameter.
///
/// Range     both 0 to 1; accurate to 1e-15.
/// Errors    NotFinite; OutOfRange.
/// Source    plane geometry, the segment of a circle: r^2 (a - sin a cos a) for half its angle a.
[[nodiscard]] Result<double> cylinderFraction(double level);

/// Return the level at which `fraction` of the volume is filled: the inverse of cylinderFraction(),
/// found by halving the half angle's range.
///
/// Range     both 0 to 1; accurate to 1e-15 of the volume.
/// Errors    NotFinite; OutOfRange.
[[nodiscard]] Result<double> cylinderLevel(double fraction);

}  // namespace spile::vessel
