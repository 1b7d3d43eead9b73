#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// Volumes from the scale. A scale shows the weight in air; liquor is lifted by the air it
/// displaces more than the steel or brass that the scale was set with.
namespace spile::liquor {

/// Return the volume at 20 °C of beer or spirit that weighs `netInAir`: gross less the tare.
///
/// Range     `netInAir` >= 0; `specificGravity` 0.7 to 1.3, 20/20 °C.
/// Errors    NotFinite; OutOfRange. `subject` is "net_kg" or "specific_gravity".
/// Accuracy  0.01 %: air of 1.2 kg/m3, weights of 8000 kg/m3. Wet staves change a tare by far more.
/// Source    OIML D 28 (2004), conventional value of the result of weighing in air.
[[nodiscard]] Result<Volume> volumeByWeight(Mass netInAir, double specificGravity);

/// Return the volume at 60 °F of a spirit of `proof` that weighs `netInAir`.
///
/// Range     `netInAir` >= 0; `proof` 0 to 200.
/// Errors    NotFinite; OutOfRange. `subject` is "net_kg" or "us_proof".
/// Accuracy  1e-4 against the US gauging tables, which use brass weights, 8400 kg/m3.
/// Source    27 CFR 30.43, 30.44 and 30.64 (gauging by weight); densities by OIML R 22.
[[nodiscard]] Result<Volume> spiritByWeight(Mass netInAir, double proof);

/// Return the volume at 60 °F of a liquor with extract that weighs `netInAir`, from its gravity in
/// air at 60/60 °F: 0.120074 gallons per pound over the gravity.
///
/// Range     `netInAir` >= 0; `gravity60F` 0.7 to 1.3.
/// Errors    NotFinite; OutOfRange. `subject` is "net_kg" or "specific_gravity_60f".
/// Source    27 CFR 30.41.
[[nodiscard]] Result<Volume> volumeByWeight60F(Mass netInAir, double gravity60F);

}  // namespace spile::liquor
