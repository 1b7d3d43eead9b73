#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"
#include "core/wood/spread.hpp"

/// What dry wood drinks from a filling.
namespace spile::wood {

/// The inner surface of the 53 gallon barrel for which trade figures are known.
inline constexpr Area soakageReference = squareMetres(1.83);

/// Return the volume of liquor in wood that is wet to a depth: S depth porosity.
///
/// Range     inner 0.01 to 100 m2; depth 0 to 100 mm; porosity 0 to 1, of which liquor can fill
///           about 0.5 in oak.
/// Errors    NotFinite; OutOfRange.
[[nodiscard]] Result<Volume> soakage(Area inner, Length depth, double porosity = 0.5);

/// Return what a filling will lose to the wood in the end, by the barrel's history.
///
/// Freshly dumped and wet 0 to 2 L per 53 gallons, after three weeks empty 3 to 6 L, after four
/// months and more 6 to 11 L (80 % intervals), straight lines between, scaled by the inner surface.
/// Re-wetting brings it back to that of wet wood by the time law of soakedBy().
///
/// Range     inner 0.01 to 100 m2; empty and rewetted 0 to 100 years.
/// Errors    NotFinite; OutOfRange.
/// Source    common practice (3 gallons for a new barrel) and memory; no measured series.
[[nodiscard]] Result<VolumeSpread> soakagePrior(Area inner, Duration empty,
                                                Duration rewetted = Duration{});

/// Return which part of the soakage has happened after a time: 1 - exp(-t / 10 d).
///
/// Range     time 0 or more.
/// Errors    NotFinite; OutOfRange.
/// Source    memory: three quarters in two weeks.
[[nodiscard]] Result<double> soakedBy(Duration time);

}  // namespace spile::wood
