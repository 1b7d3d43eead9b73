#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

#include <cstdint>

/// Moving beer out of a barrel by gas, by its own fall or by a pump. Pressures are gauge.
namespace spile::gas {

/// Above the first a barrel's heads are watched, above the second it is not done. No rating of
/// barrel heads is published: 5 psi on a head of 52 cm are the weight of 750 kg.
/// Source    common practice: 1 to 3 psi at work, a relief valve of 5 psi at most.
inline constexpr Pressure pushWarning = psi(2);
inline constexpr Pressure pushLimit = psi(5);

enum class PushCaution : std::uint8_t { Fine, Warn, Refuse };

/// Return what there is to say to a pressure on a barrel: above a limit, not at it.
///
/// Range     0 to 100 bar.
/// Errors    NotFinite; OutOfRange. `subject` is "gauge_bar".
[[nodiscard]] Result<PushCaution> pushCaution(Pressure gauge);

/// Return the force on a head, or a bung, from inside.
///
/// Range     `diameter` 0 to 3 m; `gauge` 0 to 100 bar.
/// Errors    NotFinite; OutOfRange. `subject` is "diameter_mm" or "gauge_bar".
[[nodiscard]] Result<Force> headForce(Length diameter, Pressure gauge);

/// Return the pressure that holds a liquid `height` above its surface; negative below it.
///
/// Range     `height` -50 to 50 m; `liquid` 500 to 2000 kg/m3.
/// Errors    NotFinite; OutOfRange. `subject` is "height_m" or "density_kg_m3".
[[nodiscard]] Result<Pressure> liftPressure(Length height, Density liquid);

/// Of strong beer at cellar temperature, twice that of water; from memory. It counts for little in
/// a hose where beer runs turbulent.
inline constexpr double beerViscosity = 2.0e-3;  ///< Pa s

/// A hose from the liquid to its free end.
struct BeerLine {
    Length bore;
    Length length;
    double losses = 1.5;  ///< in velocity heads: 0.5 to go in, 1 to come out, more for each fitting
};

/// Return the flow of beer through a line.
///
/// Shape     rises with `gauge` and bore; falls with `lift` and the line's length.
/// Range     bore 2 to 100 mm; length 0 to 200 m; losses 1 to 100; `gauge` 0 to 10 bar; `lift`, of
///           the line's end over the liquid's surface, -50 to 50 m: below it beer runs by itself;
///           `liquid` 500 to 2000 kg/m3. The pressure must reach the line's end.
/// Errors    NotFinite; OutOfRange. `subject` is "bore_mm", "hose_m", "losses", "gauge_bar",
///           "height_m" or "density_kg_m3"; "gauge_bar" too if it does not reach the end.
/// Accuracy  15 %: smooth hose. Beer that foams runs slower.
/// Source    Bernoulli, with friction by Darcy and Weisbach.
[[nodiscard]] Result<VolumeFlow> beerFlow(const BeerLine& line, Pressure gauge, Length lift,
                                          Density liquid);

/// Return how long `volume` takes while the lift goes evenly from `first` to `last`, as the surface
/// sinks. Gravity alone is a gauge of 0 and an end below the surface to the last.
///
/// Range     `volume` 0 to 100 m3; else as beerFlow(), for both lifts.
/// Errors    likewise, and "volume_l".
/// Accuracy  of the integral 1e-6.
[[nodiscard]] Result<Duration> emptyingTime(const BeerLine& line, Pressure gauge, Length first,
                                            Length last, Volume volume, Density liquid);

/// Return how long a pump takes.
///
/// Range     `volume` 0 to 100 m3; `flow` 0.01 to 100,000 L/min.
/// Errors    NotFinite; OutOfRange. `subject` is "volume_l" or "flow_l_min".
[[nodiscard]] Result<Duration> pumpingTime(Volume volume, VolumeFlow flow);

}  // namespace spile::gas
