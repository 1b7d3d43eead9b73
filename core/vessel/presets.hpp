#pragma once

#include "core/vessel/barrel.hpp"

#include <span>
#include <string_view>

/// The usual barrels. Coopers differ by several percent, so an own measure is always better.
///
/// Source    53 gallon and 225 litre: inner measures from memory, chosen within the outer ones that
///           the trade publishes (53 gallon: 34 to 36 in long, bilge 26 in, head 21 to 22 in, stave
///           1 to 1 1/8 in; 225 litre: 89 to 95 cm, bilge 68 to 72 cm, head 55.5 to 60 cm, stave 20
///           to 22 mm) so that the volumes agree. The others are the same shapes, larger or
///           smaller, with staves from memory.
namespace spile::vessel {

/// Where a preset's measures come from.
enum class Basis {
    PublishedOutside,  ///< inner measures that agree with published outer ones
    SimilarTo53,       ///< the 53 gallon barrel, scaled
    SimilarTo225,      ///< the 225 litre barrel, scaled
};

struct Preset {
    std::string_view name;
    Barrel barrel;
    Length stave;
    Volume volume;  ///< nominal; the barrel's own differs by up to 0.2 %
    Basis basis;
};

/// Small to large.
[[nodiscard]] std::span<const Preset> presets();

/// Return a barrel that holds `full`, of the shape of the preset whose volume is nearest by ratio.
///
/// Range     1 to 5000 L.
/// Errors    NotFinite; OutOfRange. `subject` is "full_volume_l".
[[nodiscard]] Result<Barrel> similarTo(Volume full);

/// Return the preset whose volume is nearest to `full` by ratio. Range and errors as above.
[[nodiscard]] Result<Preset> nearestPreset(Volume full);

}  // namespace spile::vessel
