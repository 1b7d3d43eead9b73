#pragma once

#include "core/vessel/barrel.hpp"

#include <optional>

/// The inside of a barrel from what a tape measures outside, and from what went in when it was
/// filled with measured water.
namespace spile::vessel {

/// Where a stave ends beyond the head's groove, and how thick the head is.
/// Source    common practice: 40 mm and 25 mm, so that a barrel is 0.12 to 0.14 m longer outside
///           than inside; none published. Measure where it matters.
inline constexpr Length usualChime = millimetres(40);
inline constexpr Length usualHeadThickness = millimetres(25);

struct OutsideMeasures {
    Length bilgeGirth;          ///< around the middle
    Length chimeGirth;          ///< around the ends of the staves
    Length length;              ///< over all, from stave end to stave end
    Length stave;               ///< thickness
    Length chime = usualChime;  ///< from the stave's end to the head
    Length headThickness = usualHeadThickness;
};

/// Return the barrel of these measures. Its head is wider than its end, for it sits where the
/// staves have already widened: by the square of the inner over the outer length.
///
/// Range     girths 0.3 to 9.5 m; length 0.1 to 3.5 m; stave 5 to 80 mm; chime 0 to 150 mm; head
///           5 to 100 mm; and the inside must be a barrel.
/// Errors    NotFinite; OutOfRange. `subject` is "bilge_girth_mm", "chime_girth_mm",
///           "length_over_all_mm", "stave_mm", "chime_mm", "head_thickness_mm", or that of
///           checkBarrel().
/// Accuracy  3 % of the volume, with a tape held to 5 mm and a stave known to 2 mm. The sizes that
///           the trade prints give 200 L for 53 gallons, and up to 7 % too much for others.
/// Source    geometry; parabolic staves.
[[nodiscard]] Result<Barrel> barrelFromOutside(const OutsideMeasures& outside);

/// Return `barrel` with its volumes multiplied so that it holds `full`, and with the bilge that a
/// stick showed in the full barrel, if one was taken.
///
/// Range     `full` 0.8 to 1.25 of what the measures give; the bilge must fit the barrel.
/// Errors    NotFinite; OutOfRange. `subject` is "full_volume_l", or that of checkBarrel().
/// Accuracy  0.2 % when `full` was weighed or metered in.
[[nodiscard]] Result<Barrel> calibrated(const Barrel& barrel, Volume full,
                                        std::optional<Length> fullDip = std::nullopt);

/// Return `barrel` with all its measures multiplied, so that it holds `full`.
///
/// Range     the measures must stay those of a barrel.
/// Errors    NotFinite; OutOfRange. `subject` is "full_volume_l", or that of checkBarrel().
[[nodiscard]] Result<Barrel> scaledTo(const Barrel& barrel, Volume full);

}  // namespace spile::vessel
