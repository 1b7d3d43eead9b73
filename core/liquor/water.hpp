#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

namespace spile::liquor {

/// Return the density of pure, air-free water at `t` and one atmosphere.
///
/// Range     0 to 40 °C, both included.
/// Errors    NotFinite; OutOfRange. `subject` is "temperature_c".
/// Accuracy  the source claims 0.001 kg/m3. Water that has stood in air is up to 0.005 lighter.
/// Limits    0.0055 kg/m3 above the water of the ethanol-water formula (ethanol_water.hpp): never
///           divide a density of the one by a density of the other.
/// Source    Tanaka, Girard, Davis, Peuto and Bignell, Metrologia 38 (2001) 301, "Recommended table
///           for the density of water", equation (1), adopted by the CIPM in 2001.
[[nodiscard]] Result<Density> waterDensity(Temperature t);

}  // namespace spile::liquor
