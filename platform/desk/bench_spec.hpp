#pragma once

#include "core/blend/problem.hpp"

#include <string_view>

namespace spile::desk {

/// A fraction in the bench's forms and lines is told in these.
constexpr double perCent = 100;

/// Read what the bench is asked from JSON text:
///
///   {"target": {ATTR: 5.0, ...}, "weight": {ATTR: 1.0, ...}, "window": {ATTR: [3.5, 6.5], ...},
///    "barrels": [{"name": "Rum 3", "volume_l": 190, "strength_abv": 11.2,
///                 "mean": {ATTR: 4.6, ...}, "sd": {ATTR: 0.4, ...}}, ...],
///    "max_barrels": 4, "max_part": 0, "min_part_share": 0, "volume_min_l": 0, "volume_max_l":
///    null, "strength_min_abv": null, "strength_max_abv": null}
///
/// Shape     target and barrels must be there; the other values above are the usual ones, a weight
///           is 1 and a deviation 0. An attribute of "mean" that is not asked for is passed over.
///           The amounts of the problem are litres, its strengths fractions.
/// Errors    Malformed, naming the member, for what is no JSON, is missing, of another kind or not
///           known; those of blend::checkProblem() come later.
[[nodiscard]] Result<blend::Problem> readBenchSpec(std::string_view text);

}  // namespace spile::desk
