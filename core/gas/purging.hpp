#pragma once

#include "core/base/result.hpp"
#include "core/gas/carbon_dioxide.hpp"
#include "core/units/units.hpp"

/// Driving the air out of a barrel with carbon dioxide, and what is left of its oxygen.
namespace spile::gas {

/// Return the oxygen left, as a part of the gas, after `turnovers` of a well mixed vessel: start
/// e^-n. What a real barrel keeps lies below, if the gas comes in slowly at the bottom.
///
/// Range     `start` 0 to 1; `turnovers`, gas over vessel by volume, >= 0.
/// Errors    NotFinite; OutOfRange. `subject` is "start_oxygen" or "turnovers".
/// Source    mass balance of a well mixed vessel.
[[nodiscard]] Result<double> dilutedOxygen(double turnovers, double start = oxygenInDryAir);

/// Return how many turnovers that needs for `target`: the inverse.
///
/// Range     `start` above 0 to 1; `target` 1e-9 to `start`.
/// Errors    NotFinite; OutOfRange. `subject` is "start_oxygen" or "target_oxygen".
[[nodiscard]] Result<double> turnoversTo(double target, double start = oxygenInDryAir);

/// The gas that fills a barrel from below if it does not mix, by the barrel's volume.
/// Source    common practice: 1 to 1.5.
inline constexpr double displacementTurnovers = 1.5;

/// From the cylinder to the bung: the regulator's gauge pressure, the narrowest bore, the hose
/// between (0 is none), and the temperature of gas and barrel.
struct PurgeLine {
    Pressure gauge;
    Length bore;
    Length hose;
    Temperature temperature = celsius(20);
};

struct Purge {
    Duration time;
    Mass gas;
    Volume gasAt1Atm;  ///< at the line's temperature
    double turnovers = 0;
    double residualOxygen = 0;  ///< part of the gas in the barrel, if it mixes well
    Mass oxygenLeft;
};

/// Return what blowing through the line into an open barrel for `time` does.
///
/// Range     `barrel` 0.1 L to 1000 m3; `time` 0 to 1e10 s; gauge 0.01 to 10 bar; bore 0.5 to
///           100 mm; hose 0 or 1 mm to 200 m; temperature 0 to 50 °C.
/// Errors    NotFinite; OutOfRange. `subject` is "vessel_l", "time_s", "gauge_bar", or that of
///           lineFlow(), or "gas_kg" over 1000 kg.
/// Accuracy  the flow to 10 to 20 %. Mixing is the careful case.
/// Limits    the barrel is open: at its bung a gauge shows nothing. Never purge a closed one so.
[[nodiscard]] Result<Purge> purgeFor(const PurgeLine& line, Volume barrel, Duration time);

/// The same until the oxygen is down to `target`.
///
/// Range     `target` 1e-9 to 0.20946. Errors likewise, "target_oxygen".
[[nodiscard]] Result<Purge> purgeTo(const PurgeLine& line, Volume barrel, double target);

/// The same with the gas let in slowly at the bottom, so that it lifts the air out: one and a half
/// turnovers. `residualOxygen` and `oxygenLeft` remain those of a mixed barrel, the careful case.
[[nodiscard]] Result<Purge> purgeByDisplacement(const PurgeLine& line, Volume barrel);

/// Filling a closed vessel to a gauge pressure and letting it off, again and again.
struct PressureCycles {
    int count = 0;
    Mass gas;
    double residualOxygen = 0;
    Mass oxygenLeft;
};

/// Return what `count` cycles do. Each leaves atm / (atm + gauge) of the oxygen.
///
/// Range     `vessel` 0.1 L to 1000 m3; `gauge` 0.01 to 10 bar; `count` 0 to 1000; `t` 0 to 50 °C.
/// Errors    NotFinite; OutOfRange. `subject` is "vessel_l", "gauge_bar", "cycles" or
///           "temperature_c".
/// Limits    for kegs and tanks. A barrel's heads bear little: see pushing.hpp.
/// Source    mass balance, ideal gas, one temperature.
[[nodiscard]] Result<PressureCycles> cyclesOf(int count, Pressure gauge, Volume vessel,
                                              Temperature t);

/// Return the fewest cycles that bring the oxygen to `target` or below.
///
/// Range     `target` 1e-9 to 0.20946; at most 1000 cycles.
/// Errors    as above and "target_oxygen"; OutOfRange with "cycles" if 1000 are not enough.
[[nodiscard]] Result<PressureCycles> cyclesTo(double target, Pressure gauge, Volume vessel,
                                              Temperature t);

/// Return what a cylinder that held `held` has left after `used`.
///
/// Range     `held` 0 to 1000 kg; `used` 0 to `held`.
/// Errors    NotFinite; OutOfRange. `subject` is "cylinder_kg" or "gas_kg".
[[nodiscard]] Result<Mass> cylinderLeft(Mass held, Mass used);

/// Return how many whole purges of `each` a cylinder of `held` has.
///
/// Range     `held` 0 to 1000 kg; `each` 1 g to 1000 kg.
/// Errors    as above.
[[nodiscard]] Result<int> purgesLeft(Mass held, Mass each);

}  // namespace spile::gas
