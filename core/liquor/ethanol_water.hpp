#pragma once

#include "core/base/result.hpp"
#include "core/liquor/density_curve.hpp"
#include "core/units/units.hpp"

/// The density of water and ethanol, the one engine behind strength, mixing and loss.
///
/// Fractions are 0 to 1; amounts at most amountMost (limits.hpp). By volume means: litres of
/// ethanol at 20 °C that could be got from one litre of the liquor at 20 °C.
///
/// Accuracy  OIML states no figure; pure ethanol agrees with its published densities within 0.005
///           kg/m3, older American tables differ by up to 0.1: never mix tables.
/// Source    OIML R 22, International alcoholometric tables (1973, edition 1975), general formula.
namespace spile::liquor {

/// The curve at 20 °C, at which all strengths by volume are stated.
inline constexpr DensityCurve densityCurveAt20(20);

/// Return the density at 20 °C in kg/m3, without checks: a dozen products, for inner loops.
///
/// Requires  0 <= `alcoholByMass` <= 1.
[[nodiscard]] constexpr double densityAt20(double alcoholByMass) noexcept
{
    return densityCurveAt20.at(alcoholByMass);
}

/// kg/m3 at 20 °C, by the formula: 998.20123 and 789.23912.
inline constexpr double waterDensityAt20 = densityAt20(0);
inline constexpr double ethanolDensityAt20 = densityAt20(1);

/// Return the density of water and ethanol.
///
/// Range     `alcoholByMass` 0 to 1; `t` -20 to 40 °C, where the liquor is not frozen.
/// Errors    NotFinite; OutOfRange. `subject` is "alcohol_by_mass" or "temperature_c".
/// Limits    below 0 °C weak liquors freeze; that is not found out here.
[[nodiscard]] Result<Density> densityByMass(double alcoholByMass, Temperature t);

/// Return the mass fraction of ethanol of a liquor of water and ethanol with `density` at `t`: the
/// inverse of densityByMass().
///
/// Range     `t` 0 to 40 °C, where density falls strictly with strength; `density` from that of
///           ethanol to that of water, both by this formula.
/// Errors    NotFinite; OutOfRange. `subject` is "density_kg_m3" or "temperature_c".
/// Accuracy  round trip within 1e-9.
[[nodiscard]] Result<double> massFractionByDensity(Density density, Temperature t);

/// Return the mass fraction for a fraction by volume at 20 °C, and back; inverses within 1e-12.
///
/// Range     0 to 1, both included.
/// Errors    NotFinite; OutOfRange. `subject` is "alcohol_by_volume" or "alcohol_by_mass".
[[nodiscard]] Result<double> massFractionByVolume(double alcoholByVolume);
[[nodiscard]] Result<double> volumeFractionByMass(double alcoholByMass);

/// Return the volume at 20 °C of what fills `volume` at `t`; liquor of water and ethanol. For beer
/// it is an estimate: its extract widens less than the ethanol does.
///
/// Range     `t` -20 to 40 °C; `alcoholByVolume` 0 to 1 at 20 °C; `volume` >= 0.
/// Errors    NotFinite; OutOfRange.
[[nodiscard]] Result<Volume> volumeAt20(Volume volume, double alcoholByVolume, Temperature t);

}  // namespace spile::liquor
