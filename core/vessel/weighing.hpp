#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// What a barrel holds, by the scale.
///
/// Wood takes up liquor for weeks: a barrel of 45 kg gains up to 10 kg. So the tare is that of the
/// wet, drained barrel, or the answer is short by the soakage.
namespace spile::vessel {

/// Return the volume at 20 °C of what a barrel holds, from its gross weight and its wet tare as a
/// scale shows them in air.
///
/// Range     `tareWet` >= 0; `gross` >= `tareWet`, up to 5000 kg; `specificGravity` 0.7 to 1.3,
///           20/20 °C.
/// Errors    NotFinite; OutOfRange. `subject` is "tare_kg", "gross_kg" or "specific_gravity".
/// Accuracy  0.01 %: water of 998.201 kg/m3, air of 1.2 kg/m3, and a scale set with weights of
///           8000 kg/m3. Without the lift of the air it would be 0.10 % short.
/// Limits    at another temperature the volume is another: see liquor/ethanol_water.hpp.
/// Source    OIML D 28 (2004), conventional value of the result of weighing in air.
[[nodiscard]] Result<Volume> volumeByWeight(Mass gross, Mass tareWet, double specificGravity);

/// Return what the scale shows for a barrel that holds `volume` of 20 °C: the inverse.
///
/// Range     `volume` 0 to 5 m3, else as above.
/// Errors    NotFinite; OutOfRange. `subject` is "volume_l", "tare_kg" or "specific_gravity".
[[nodiscard]] Result<Mass> grossWeight(Volume volume, Mass tareWet, double specificGravity);

}  // namespace spile::vessel
