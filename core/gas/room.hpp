#pragma once

#include "core/base/result.hpp"
#include "core/gas/carbon_dioxide.hpp"
#include "core/units/units.hpp"

#include <cstdint>

/// Carbon dioxide in the air of a room in which it is let out. Nothing here allocates.
///
/// Limits    one well mixed room. The gas is half again as heavy as air and pools low: near the
///           bung and on the floor it is 3 to 10 times the mean for a while, from memory. A model
///           never replaces a monitor.
namespace spile::gas {

/// Fractions by volume.
/// Source    OSHA, 29 CFR 1910.1000, table Z-1 (8 hours); NIOSH Pocket Guide to Chemical Hazards
///           (15 minutes; immediately dangerous to life or health).
inline constexpr double co2EightHourLimit = 5000e-6;
inline constexpr double co2ShortTermLimit = 30'000e-6;
inline constexpr double co2DangerLimit = 40'000e-6;

struct Room {
    Volume volume;
    VolumeFlow ventilation;     ///< of outside air
    double before = co2InAir;   ///< fraction of carbon dioxide when the release begins
    double outside = co2InAir;  ///< and in the air that comes in
};

/// Return the ventilation that renews a room's air `perHour` times an hour: 0.5 for a closed
/// garage, 2 with windows open, from memory.
///
/// Range     `room` 1 to 1e6 m3; `perHour` 0 to 100.
/// Errors    NotFinite; OutOfRange. `subject` is "room_m3" or "air_changes".
[[nodiscard]] Result<VolumeFlow> airChanges(Volume room, double perHour);

/// Gas let out evenly from the beginning on.
struct Release {
    VolumeFlow gas;
    Duration time;
};

/// Return the fraction of carbon dioxide at `at` after the beginning of the release.
///
/// Shape     rises while gas comes out (or falls from a higher start to what it would rise to);
///           then falls. Never above 1.
/// Range     room 1 to 1e6 m3; ventilation 0 to 1e5 m3/h; gas 0 to 10 m3/s; `at` and release 0 to
///           1e10 s; `outside` 0 to 1, `before` from it to 1.
/// Errors    NotFinite; OutOfRange. `subject` is "room_m3", "ventilation_m3_h", "gas_l_min",
///           "time_s", "before" or "outside".
/// Accuracy  the gas does not push air out in the model: 1 % too much where 2 % of the room are
///           let out, and 1 where there would be more than the room holds.
/// Source    mass balance of one well mixed zone.
[[nodiscard]] Result<double> roomCo2(const Room& room, const Release& release, Duration at);

/// What somebody who stays in the room breathes.
struct Exposure {
    double peak = 0;
    double shortTermMean = 0;  ///< of the worst 15 minutes
    double eightHourMean = 0;  ///< from the beginning on
};

/// Return the exposure to a release. Range, errors and accuracy as above.
[[nodiscard]] Result<Exposure> exposureTo(const Room& room, const Release& release);

enum class RoomAir : std::uint8_t {
    Clear,
    AboveEightHour,  ///< the mean of eight hours is above the limit
    AboveShortTerm,  ///< so is that of fifteen minutes
    AboveDanger,     ///< the peak is dangerous at once
};

/// Return the worst that an exposure is: above a limit, not at it.
[[nodiscard]] RoomAir roomAir(const Exposure& exposure);

/// Return what a mass of gas adds to the fraction in a room without ventilation.
///
/// Range     room 1 to 1e6 m3; `gas` 0 to 1000 kg; `t` 0 to 50 °C; at most 1.
/// Errors    NotFinite; OutOfRange. `subject` is "room_m3", "gas_kg" or "temperature_c".
[[nodiscard]] Result<double> co2Added(Volume room, Mass gas, Temperature t);

}  // namespace spile::gas
