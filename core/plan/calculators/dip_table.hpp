#pragma once

#include "core/plan/calculators/calculator.hpp"
#include "core/vessel/barrel.hpp"

namespace spile::plan {

/// Return the rows of a dip table for the inputs of the calculator "dip-table": what stands in the
/// level barrel on its side at each dip. Up to 3001 rows, a few microseconds each.
///
/// Errors    as calculate().
[[nodiscard]] Result<std::vector<vessel::DipRow>> dipRowsOf(const Given& given);

}  // namespace spile::plan
