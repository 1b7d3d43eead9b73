#pragma once

#include "core/plan/calculators/calculator.hpp"
#include "core/wood/loss_band.hpp"

/// The barrel and its cellar in the calculators of loss; for the files of this folder alone.
namespace spile::plan {

/// Of the inputs "temperature" and "humidity".
[[nodiscard]] wood::Climate climateOf(const Given& given);

/// Of "size", "area" and "stave"; what is not given is usual for the size.
[[nodiscard]] Result<wood::WoodPrior> woodOf(const Given& given);

}  // namespace spile::plan
