#pragma once

#include "core/cellar/cellar.hpp"

namespace spile::demo {

/// Let an open cellar have `barrels` barrels more, for tests and benches of a large one: five of
/// six are full since some day of the last 14 months, gauged, and most of them tasted month by
/// month. The entries are those that the acts make, checked as theirs, but many to a transaction.
///
/// The same cellar, clock and seed give the same records.
[[nodiscard]] Result<void> growCellar(cellar::Cellar& cellar, std::size_t barrels,
                                      std::uint64_t seed);

}  // namespace spile::demo
