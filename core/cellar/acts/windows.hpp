#pragma once

#include "core/cellar/acts/registering.hpp"

/// The windows of a beer: what it should taste like when it is taken out.
namespace spile::cellar {

/// Let the beer of `batch` have exactly these windows; one that is left out is cleared. The target
/// of the batch is changed, for all batches that share it; one without a target gets its own.
/// Nothing is recorded if they are the same already.
///
/// Errors    those of every act; OutOfRange for a window that does not go upwards within 1 to 9;
///           Conflict for an attribute that has two.
[[nodiscard]] Result<void> setWindows(Cellar& cellar, const SubjectId& batch,
                                      const std::vector<Window>& windows);

}  // namespace spile::cellar
