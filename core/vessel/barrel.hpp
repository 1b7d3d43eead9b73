#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

#include <cstddef>
#include <span>

/// What a barrel holds at a dip, lying or standing, and the dip of what it holds.
///
/// A barrel is a solid of revolution: staves curved by a parabola, an ellipse or an arc of a circle
/// between two flat heads. For a 53 gallon barrel the three differ by 0.3 % of the volume; the
/// millimetres of its measures matter more.
///
/// Accuracy  of the mathematics, for heads of at least half the bilge and lengths of at least 0.8
///           of it, as all barrels have: lying volumes 1e-9 of the full one, wetted areas 1e-8 of
///           the inner one; 1e-4 for all others, down to a head of nothing. Full and standing
///           volumes 1e-13. What a real barrel holds is known to 1 % from its measures, and to 0.2
///           % where it was calibrated and its dip taken.
/// Errors    of all functions: NotFinite; OutOfRange. `subject` is the measure, with its unit, the
///           value and the limits in that unit.
/// Limits    wood swells and staves bend; the bung's hole and the heads' dishing are left out.
/// Source    geometry; the full volumes are Kepler's, Nova stereometria doliorum vinariorum (1615).
namespace spile::vessel {

enum class Profile { Parabola, Ellipse, Circle };

/// Inner measures. `calibration` is what volumes are multiplied by so that the full one agrees with
/// a measured one; it leaves areas and lengths alone.
struct Barrel {
    Profile profile = Profile::Parabola;
    Length length;  ///< between the heads
    Length bilge;   ///< diameter at mid-length
    Length head;    ///< diameter
    double calibration = 1.0;
};

/// Ten degrees, in radians: how far the axis of a lying barrel may lean.
inline constexpr double tiltMost = 0.17453292519943295;

/// Check that there is such a barrel. All functions below do.
///
/// Range     length and bilge 0.1 to 3 m; head 0 to the bilge, and wider than the bilge less the
///           length (an arc of a circle bends no further); calibration 0.5 to 2.
/// Errors    `subject` is "length_mm", "bilge_mm", "head_mm" or "calibration".
[[nodiscard]] Result<void> checkBarrel(const Barrel& barrel);

[[nodiscard]] Result<Volume> fullVolume(const Barrel& barrel);

/// Return the inner area: staves and both heads.
[[nodiscard]] Result<Area> innerArea(const Barrel& barrel);

/// Return what of the inner area is wet in a level barrel on its side.
///
/// Range     `dip` 0 to the bilge.
[[nodiscard]] Result<Area> wettedArea(const Barrel& barrel, Length dip);

/// Return the volume of the liquid in a barrel on its side, bung up.
///
/// Shape     `dip` is the wet length of a stick through the bung to the stave below it, at a right
///           angle to the axis; strictly increasing in it. Leaning either way is the same.
/// Range     `dip` 0 to the bilge; `tiltRadians`, the axis from the horizontal, up to `tiltMost`.
///           A leaning barrel still holds something at a dip of 0, and is not full at the bilge.
/// Errors    `subject` is "dip_mm" or "tilt_rad".
[[nodiscard]] Result<Volume> lyingVolume(const Barrel& barrel, Length dip, double tiltRadians = 0);

/// Return the dip at which a barrel on its side holds `volume`: the inverse of lyingVolume().
///
/// Range     the volumes from dip 0 to the bilge.
/// Errors    `subject` is "volume_l" or "tilt_rad".
/// Accuracy  1e-9 of the bilge; within 2e-8 m where what is missing to the full barrel is so little
///           that a double hardly holds it.
[[nodiscard]] Result<Length> lyingDip(const Barrel& barrel, Volume volume, double tiltRadians = 0);

/// Return the volume of the liquid in a barrel that stands on a head.
///
/// Range     `depth` 0 to the length.
/// Errors    `subject` is "depth_mm".
[[nodiscard]] Result<Volume> standingVolume(const Barrel& barrel, Length depth);

/// Return the depth at which a standing barrel holds `volume`: the inverse of standingVolume().
///
/// Range     0 to the full volume.
/// Errors    `subject` is "volume_l".
[[nodiscard]] Result<Length> standingDepth(const Barrel& barrel, Volume volume);

/// Return how high the liquid in a level barrel on its side stands on the circle of a head, 0 to 1
/// of the head's diameter: 0 below it, 1 above it.
///
/// Range     `held` 0 to the full volume.
/// Errors    `subject` is "volume_l".
[[nodiscard]] Result<double> headLevel(const Barrel& barrel, Volume held);

struct DipRow {
    Length dip;
    Volume volume;
};

/// Return how many rows dipTable() writes for `step`: dips of 0, each step, and the bilge.
///
/// Range     `step` 0.1 mm to the bilge.
/// Errors    `subject` is "step_mm".
[[nodiscard]] Result<std::size_t> dipTableRows(const Barrel& barrel, Length step);

/// Write the volumes of the level barrel on its side, by dip.
///
/// Shape     `rows` as long as dipTableRows() says; both columns strictly increasing, the first row
///           is empty and the last one full, whose step may be shorter. Allocates nothing.
/// Range     as dipTableRows().
/// Errors    `subject` is "step_mm", or "rows" for a wrong number of rows; `rows` is unchanged.
[[nodiscard]] Result<void> dipTable(const Barrel& barrel, Length step, std::span<DipRow> rows);

}  // namespace spile::vessel
