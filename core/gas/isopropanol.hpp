#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// The spirit that fittings, bungs and nails are sprayed with, and what it may not meet: a flame, a
/// hot drill bit, a steamed fitting.
namespace spile::gas {

/// Above it, in air, a flame lights the vapour: 53 °F.
/// Source    NIOSH Pocket Guide to Chemical Hazards, isopropyl alcohol; class IB liquid.
inline constexpr Temperature isopropanolFlashPoint = fahrenheit(53);
/// Fractions of air by volume between which it burns; the upper one at 200 °F. Same source.
inline constexpr double isopropanolLowerLimit = 0.020;
inline constexpr double isopropanolUpperLimit = 0.127;
/// Fractions by volume: eight hours; dangerous at once, a tenth of the lower limit. Same source.
inline constexpr double isopropanolEightHourLimit = 400e-6;
inline constexpr double isopropanolDanger = 2000e-6;
/// From memory.
inline constexpr Temperature isopropanolIgnition = celsius(399);
/// Of spirit of 40 % by volume; from memory.
inline constexpr Temperature spiritFlashPoint = celsius(26);
/// Metal that is no warmer may be sprayed, in moving air. Source: common practice.
inline constexpr Temperature sprayedMetalMost = celsius(40);

/// Return the volume of air at 20 °C that `liquid`, all vapour, fills to its lower limit.
///
/// Range     0 to 1000 L.
/// Errors    NotFinite; OutOfRange. `subject` is "liquid_l".
/// Source    ideal gas; 785 kg/m3 and 60.096 g/mol, from memory.
[[nodiscard]] Result<Volume> airAtLowerLimit(Volume liquid);

}  // namespace spile::gas
