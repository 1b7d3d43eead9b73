#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// What beer and spirit give to the air: the vapour pressures of water and ethanol over them.
namespace spile::wood {

/// The temperatures of this folder. Below 0 °C the ethanol equation is extrapolated (within 3 % of
/// Stull 1947 at -12 °C, from memory).
inline constexpr double coldestCelsius = -15;
inline constexpr double warmestCelsius = 45;

/// Return the pressure at which the vapour of pure water saturates, over liquid water.
///
/// Range     -15 to 45 °C; strictly increasing.
/// Errors    NotFinite; OutOfRange.
/// Accuracy  0.05 % of the steam tables at 5..40 °C.
/// Source    Buck Research manual (1996), enhancement factor left out.
[[nodiscard]] Result<Pressure> waterVapourPressure(Temperature t);

/// Return the vapour pressure of pure ethanol.
///
/// Range     -15 to 45 °C; the source's own is 273..351 K. Strictly increasing.
/// Errors    NotFinite; OutOfRange.
/// Accuracy  1 % of the International Critical Tables at 10..40 °C, 2.5 % at 0 °C.
/// Source    Antoine equation log10(p/bar) = 5.37229 - 1670.409/(T - 40.191), T in K.
[[nodiscard]] Result<Pressure> ethanolVapourPressure(Temperature t);

/// Return the activity coefficient of a trace of ethanol in water.
///
/// Range     -15 to 45 °C; rises with temperature there.
/// Errors    NotFinite; OutOfRange.
/// Accuracy  that of Henry's constant, about 5 %.
/// Source    55 346/(H p), H = 1.9 mol/(m3 Pa) at 25 °C with 6400 K: Sander, Atmos. Chem. Phys. 15
///           (2015) 4399. The molar density of water is taken at 20 °C.
[[nodiscard]] Result<double> traceEthanolActivity(Temperature t);

/// By how much each is readier to evaporate than its mole fraction says.
struct ActivityCoefficients {
    double ethanol{};
    double water{};
};

/// Return the activity coefficients of ethanol and water in their mixture.
///
/// Range     `ethanolMoleFraction` 0 to 1 (of ethanol and water alone, extract left out); t -15 to
///           45 °C. The pair obeys the equation of Gibbs and Duhem at every t.
/// Errors    NotFinite; OutOfRange.
/// Accuracy  partial pressures of ethanol at 25 °C within 2 % of the published ones for mole
///           fractions 0.02 to 0.5. As x goes to 0 it is 6 % above what Henry's constant asks.
/// Limits    fits to boiling mixtures (van Laar, NRTL, Wilson at 1 atm) are about twice too high
///           for ethanol in a cellar; do not put them in here.
/// Source    Redlich-Kister, three terms fitted to published partial pressures at 298 K, the first
///           term moved with temperature so that a trace of ethanol follows Henry's constant.
[[nodiscard]] Result<ActivityCoefficients> activityCoefficients(double ethanolMoleFraction,
                                                                Temperature t);

/// All that a day's loss takes from temperature, made once per climate and then used each day.
struct VapourBasis {
    double waterSaturation{};       // Pa
    double logEthanolSaturation{};  // ln of Pa
    double logActivityShift{};      // added to the first Redlich-Kister term
};

/// Return what vapourPressures() needs at `t`: one exponential.
///
/// Errors    NotFinite; OutOfRange.
[[nodiscard]] Result<VapourBasis> vapourBasis(Temperature t);

/// Requires  -15 to 45 °C.
[[nodiscard]] VapourBasis vapourBasisUnchecked(Temperature t) noexcept;

struct VapourPressures {
    double ethanol{};        // Pa
    double waterActivity{};  // relative humidity of the air in balance with the liquid
};

/// Return what stands over the mixture: the inner step of a daily course, two exponentials.
///
/// Requires  `ethanolMoleFraction` 0 to 1.
[[nodiscard]] VapourPressures vapourPressures(double ethanolMoleFraction,
                                              const VapourBasis& basis) noexcept;

}  // namespace spile::wood
