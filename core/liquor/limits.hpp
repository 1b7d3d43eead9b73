#pragma once

namespace spile::liquor {

/// The greatest amount that is computed with, in m3 or kg: more than any cellar holds, and so far
/// from the greatest double that no sum of them overflows.
inline constexpr double amountMost = 1e9;

}  // namespace spile::liquor
