#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

#include <cstdint>

/// Carbon dioxide into beer, in kegs and bottles. Volumes are those of solubility.hpp.
namespace spile::gas {

/// Return the gauge pressure that keeps beer of `t` at `volumes`, by the keg chart.
///
/// Shape     strictly increasing in both.
/// Range     `t` 0 to 30 °C; `volumes` 1 to 5. Below 0 where the beer holds them without pressure.
/// Errors    NotFinite; OutOfRange. `subject` is "temperature_c" or "co2_volumes".
/// Accuracy  0.1 psi of the printed charts, which end at 5 °C less and 3.5 volumes.
/// Limits    beer of usual gravity at sea level: 0.5 psi more for each 300 m of height.
/// Source    the polynomial fitted to the trade's chart of pressure, temperature and volumes, in
///           psi and degrees Fahrenheit; common practice, its author is not known.
[[nodiscard]] Result<Pressure> kegPressure(double volumes, Temperature t);

/// Return the volumes that beer of `t` comes to under `gauge`: the inverse of kegPressure().
///
/// Range     `t` 0 to 30 °C; pressures of 1 to 5 volumes.
/// Errors    NotFinite; OutOfRange. `subject` is "temperature_c" or "gauge_psi".
/// Accuracy  1e-12 of the inverse.
[[nodiscard]] Result<double> kegVolumes(Pressure gauge, Temperature t);

/// How the gas gets into the beer.
enum class Carbonating : std::uint8_t { Standing, Shaken, Stone };

/// Return the time in which the distance to the keg's pressure falls to 1/e: three days standing,
/// fifteen minutes shaken, two hours through a stone.
///
/// Accuracy  none claimed: common practice, no source. Observe an own keg and use its time.
[[nodiscard]] Duration usualTimeConstant(Carbonating how);

/// Return the volumes after `time` under a pressure that leads to `last`, of first order.
///
/// Range     `first` and `last` 0 to 10 volumes; `time` >= 0; `timeConstant` 1 s to a year.
/// Errors    NotFinite; OutOfRange. `subject` is "co2_volumes", "time_s" or "time_constant_s".
/// Accuracy  none claimed beyond the form.
[[nodiscard]] Result<double> volumesAfter(double first, double last, Duration time,
                                          Duration timeConstant);

/// Return when volumesAfter() comes to `target`.
///
/// Range     `target` from `first` to `last`, `last` itself excluded unless it is `first`.
/// Errors    as above; OutOfRange with subject "target_volumes".
[[nodiscard]] Result<Duration> timeToVolumes(double first, double last, double target,
                                             Duration timeConstant);

/// Return the volumes that beer has after fermenting, by the warmest temperature since.
///
/// Shape     strictly decreasing in `warmest`.
/// Range     `warmest` 0 to 30 °C.
/// Errors    NotFinite; OutOfRange. `subject` is "temperature_c".
/// Limits    beer under its own gas at one atmosphere. In a barrel it loses more, through the wood
///           and at each opening: after months 0.3 to 0.9 of it, from memory. Measure it.
/// Source    the polynomial of the home brewers' priming tables; its author is not known.
[[nodiscard]] Result<double> residualVolumes(Temperature warmest);

/// Whether beer is flat enough for a closed barrel: it holds no more than it would under its own
/// gas at one atmosphere at the warmest it will get, so that it does not push at bung and heads.
///
/// Range     `volumes` 0 to 10; `warmest` 0 to 30 °C.
/// Errors    NotFinite; OutOfRange. `subject` is "co2_volumes" or "temperature_c".
/// Source    common practice.
[[nodiscard]] Result<bool> isFlatEnough(double volumes, Temperature warmest);

enum class Sugar : std::uint8_t { Sucrose, Glucose, DextroseMonohydrate };

/// Return the carbon dioxide that yeast makes of a gram of sugar, in grams.
///
/// Source    C6H12O6 -> 2 C2H5OH + 2 CO2, by molar masses: 0.5143, 0.4886, 0.4442.
[[nodiscard]] double co2PerSugar(Sugar sugar);

/// Return the sugar that brings `beer` from `residual` to `target` volumes.
///
/// Range     `beer` 0 to 1000 m3; `residual` 0 to `target`, which is up to 10.
/// Errors    NotFinite; OutOfRange. `subject` is "beer_l", "residual_volumes" or "target_volumes".
/// Limits    all of it ferments. In strong aged beer that needs fresh yeast.
[[nodiscard]] Result<Mass> primingSugar(Sugar sugar, Volume beer, double residual, double target);

/// Above it bottles that are not made for it are a danger. Source: common practice for the usual
/// long-necked bottle; ask the bottle's maker.
inline constexpr double bottleVolumesCaution = 3.0;

/// Return the gauge pressure in a bottle whose beer holds `volumes`, by beer's solubility, which
/// reaches further than the keg chart. A caution for warm storage.
///
/// Range     `volumes` 0 to 10; `t` 0 to 40 °C. Below 0 where less is held than at one atmosphere.
/// Errors    NotFinite; OutOfRange. `subject` is "co2_volumes" or "temperature_c".
/// Accuracy  5 %; Henry's law without fugacity.
[[nodiscard]] Result<Pressure> bottlePressure(double volumes, Temperature t);

}  // namespace spile::gas
