#pragma once

#include "core/base/result.hpp"

namespace spile::liquor {

/// Return the extract of wort before fermentation from a refractometer's Brix scale, which is made
/// for sucrose: its reading over the brewer's own `wortFactor` (about 1.04, found by comparing with
/// a hydrometer).
///
/// Range     `brix` 0 to 40; `wortFactor` 0.9 to 1.2.
/// Errors    NotFinite; OutOfRange. `subject` is "brix" or "wort_factor".
/// Limits    nothing fermented: alcohol bends light too.
/// Source    the definition of the factor; common practice.
[[nodiscard]] Result<double> wortPlatoByBrix(double brix, double wortFactor);

/// Refuse: no published method is known to us that gets a beer's gravity from its Brix reading
/// without a density; what is in use are fits to a few dozen home-brewed beers.
///
/// Errors    Unsupported always; `limit` names what to measure with instead.
[[nodiscard]] Result<double> beerGravityByBrix(double brix, double originalExtract);

}  // namespace spile::liquor
