#pragma once

#include <vector>

namespace spile::panel {

/// Return the order in which `n` things are asked for in the `session`th sheet: 0 to n - 1, each
/// once. Over all rows of the design (n for an even n, 2n for an odd one, then from the beginning)
/// each thing stands equally often in each place and right after each other thing, so that what was
/// tasted just before weighs equally on all.
///
/// Requires  n >= 0; any session.
/// Source    E. J. Williams, "Experimental designs balanced for the estimation of residual effects
///           of treatments", Australian Journal of Scientific Research A 2 (1949) 149-168.
[[nodiscard]] std::vector<int> williamsRow(int n, int session);

}  // namespace spile::panel
