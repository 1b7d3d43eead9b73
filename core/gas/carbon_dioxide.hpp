#pragma once

#include "core/units/units.hpp"

/// The gas in the cylinder, and the air it drives out.
namespace spile::gas {

inline constexpr double gasConstant = 8.314462618;  ///< J/(mol K), exact (SI 2019)

/// Source    molar masses: IUPAC standard atomic weights. Heat capacities' ratio and viscosity:
///           from memory, at 20 °C and low pressure; flow goes with the root of the one and hardly
///           with the other.
inline constexpr double co2MolarMass = 44.0095e-3;                    ///< kg/mol
inline constexpr double oxygenMolarMass = 31.9988e-3;                 ///< kg/mol
inline constexpr double co2SpecificGas = gasConstant / co2MolarMass;  ///< J/(kg K)
inline constexpr double co2HeatRatio = 1.294;
inline constexpr double co2Viscosity = 1.47e-5;  ///< Pa s

/// The fraction of dry air, by volume.
/// Source    US Standard Atmosphere (1976): 20.9476 %; by common use 20.946 %.
inline constexpr double oxygenInDryAir = 0.20946;

/// What cellar air holds of carbon dioxide before any is let out, by volume. About what outside air
/// has.
inline constexpr double co2InAir = 420e-6;

inline constexpr Pressure atmosphere = pascals(factor::atmosphere);

}  // namespace spile::gas
