#pragma once

#include "core/labels/label_layout.hpp"

#include <string>

namespace spile::labels {

/// Return all that is black on `label` as path data of SVG (M L C H V Z, absolute), in mm from the
/// top left of its cell: for showing on a screen what will be printed.
[[nodiscard]] std::string pathOf(const PlacedLabel& label);

}  // namespace spile::labels
