#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// Oxygen: what beer can take up, and what stands above it.
namespace spile::gas {

/// Return the oxygen in fresh water that stands under moist air of one atmosphere.
///
/// Shape     strictly decreasing in `t`.
/// Range     `t` 0 to 40 °C.
/// Errors    NotFinite; OutOfRange. `subject` is "temperature_c".
/// Accuracy  0.03 mg/L of the European standard's table (EN 25814). Strong beer: within about 10 %
///           of it, from memory.
/// Source    Benson and Krause, Limnology and Oceanography 29 (1984) 620, fresh water.
[[nodiscard]] Result<Density> oxygenSaturation(Temperature t);

/// Return the oxygen in dry air: per litre of air, about thirty times what a litre of beer can
/// dissolve.
///
/// Range     `t` 0 to 50 °C; `pressure`, absolute, 0 to 10 bar.
/// Errors    NotFinite; OutOfRange. `subject` is "temperature_c" or "pressure_bar".
/// Source    ideal gas, 20.946 % by volume.
[[nodiscard]] Result<Density> oxygenInAir(Temperature t,
                                          Pressure pressure = pascals(factor::atmosphere));

/// Return how much oxygen a litre of beer gets if it takes up all that came in with air, when
/// `exchanged` of the head space was renewed. Per opening of a bung 0.1 to 0.3, from memory.
///
/// Range     `headSpace` 0 to 10 m3; `exchanged` 0 to 1; `beer` 0.1 L to 1000 m3; `t` 0 to 50 °C.
/// Errors    NotFinite; OutOfRange. `subject` is "head_space_l", "exchanged", "beer_l" or
///           "temperature_c".
[[nodiscard]] Result<Density> oxygenTakenUp(Volume headSpace, double exchanged, Volume beer,
                                            Temperature t);

}  // namespace spile::gas
