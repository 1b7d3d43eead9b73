#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// How much carbon dioxide water and beer hold under its partial pressure.
///
/// One volume is one litre of the gas at 0 °C and one atmosphere in a litre of beer: 1.977 g/L, for
/// the gas as it is (22.263 L/mol). The ideal gas would give 1.9635 g/L, 0.7 % less, and some
/// tables of the trade use 1.96.
namespace spile::gas {

inline constexpr Density co2PerVolume = gramsPerLitre(1.977);

/// Return the mass dissolved in pure water.
///
/// Shape     proportional to `partial`, strictly decreasing in `t`.
/// Range     `t` 0 to 40 °C; `partial`, absolute, 0 to 10 bar.
/// Errors    NotFinite; OutOfRange. `subject` is "temperature_c" or "pressure_bar".
/// Accuracy  0.5 % of other measurements at one atmosphere. Above that Henry's law, without the
///           gas's fugacity: 1 % too much at 2 bar.
/// Source    Weiss, Marine Chemistry 2 (1974) 203, equation (12) at salinity 0, per litre.
[[nodiscard]] Result<Density> co2InWater(Temperature t, Pressure partial);

/// The same as a mole fraction, from other measurements: the check of the one by the other.
///
/// Range     `t` 0 to 100 °C; `partial` 0 to 10 bar. Errors as above.
/// Source    Carroll, Slupsky and Mather, J. Phys. Chem. Ref. Data 20 (1991) 1201: ln of Henry's
///           constant in MPa.
[[nodiscard]] Result<double> co2MoleFractionInWater(Temperature t, Pressure partial);

/// Return the mass dissolved in beer: what water holds by 0.93.
///
/// Range     as co2InWater(). Errors likewise.
/// Accuracy  1 % of the keg charts from 0 to 7 °C, of which 0.93 is the ratio (0.921 to 0.939);
///           strong beer may differ by a few percent more.
[[nodiscard]] Result<Density> co2InBeer(Temperature t, Pressure partial);

/// Return the volumes of carbon dioxide that `dissolved` is, and back.
///
/// Range     0 to 100 g/L; 0 to 50 volumes.
/// Errors    NotFinite; OutOfRange. `subject` is "co2_g_per_l" or "co2_volumes".
[[nodiscard]] Result<double> co2Volumes(Density dissolved);
[[nodiscard]] Result<Density> co2Dissolved(double volumes);

}  // namespace spile::gas
