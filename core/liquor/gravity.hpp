#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// Specific gravity (20/20 °C) and extract in degrees Plato (grams in 100 g).
namespace spile::liquor {

/// The range of degreesPlato(); AE of a dry strong beer lies below 1.
inline constexpr double specificGravityLeast = 0.980;
inline constexpr double specificGravityMost = 1.200;

/// Return the extract of a sugar solution, or the apparent extract of beer.
///
/// Shape     continuous with its slope, strictly increasing, exactly 0 at 1.
/// Range     `specificGravity` 0.980 to 1.200: -5.26 to 44.08 °P.
/// Errors    NotFinite; OutOfRange. `subject` is "specific_gravity".
/// Accuracy  the ASBC cubic below 1.101 and the NBS cubic above 1.110, blended between, where they
///           differ by 0.006 to 0.011 °P. Within 0.005 of 1 up to 0.003 °P is added to the cubic,
///           which gives -0.003 for water. Against densities of sucrose solutions in air: within
///           0.03 °P.
/// Source    ASBC cubic: fit to the table "Extract in wort and beer", ASBC Methods of Analysis; NBS
///           cubic: fit to the Brix table of NBS Circular 440 (1942).
[[nodiscard]] Result<double> degreesPlato(double specificGravity);

/// Return the specific gravity of a sugar solution: the inverse of degreesPlato(), within 1e-12.
///
/// Range     degreesPlato() of the range above.
/// Errors    NotFinite; OutOfRange. `subject` is "degrees_plato".
[[nodiscard]] Result<double> specificGravityOfPlato(double degreesPlato);

/// The same without checks, for inner loops: a cubic and two steps of Newton's.
///
/// Requires  -5.26 <= `degreesPlato` <= 44.08.
[[nodiscard]] double specificGravityOfPlatoUnchecked(double degreesPlato) noexcept;

/// Return the specific gravity of the sample, corrected for its temperature: what a hydrometer
/// adjusted at `reference` (scale 1 in water of that temperature) shows as `reading` in it.
///
/// The answer is its density over that of water, both at the sample's temperature: R rw(tc) / rw(t)
/// (1 - 25e-6 (t - tc)). So far as it widens like water that is its gravity at 20/20 °C and at
/// `reference` alike.
///
/// Range     `reading` 0.700 to 1.300; `sample` 0 to 40 °C; `reference` 15 to 25 °C.
/// Errors    NotFinite; OutOfRange.
/// Accuracy  within 15 to 25 °C 0.0004 for sugar solutions of 20 °P and liquors of 10 % by volume;
///           at 10 and 30 °C they are off by 0.001.
/// Source    water: Tanaka et al., Metrologia 38 (2001) 301; glass: ISO 1768:1975.
[[nodiscard]] Result<double> correctedGravity(double reading, Temperature sample,
                                              Temperature reference);

/// Whether a reading at this temperature should be taken again nearer to 20 °C: the sample did not
/// widen like water. Below 15 or above 25 °C; also if it is no number.
[[nodiscard]] bool isFarFromReference(Temperature sample);

}  // namespace spile::liquor
