#pragma once

#include "core/labels/label_layout.hpp"

#include <string>

namespace spile::labels {

/// Return all that is black on `label` as path data of SVG (M L C H V Z, absolute), in mm from the
/// top left of its cell: for showing on a screen what will be printed.
[[nodiscard]] std::string pathOf(const PlacedLabel& label);

/// The same of a symbol alone, with its quiet zone, in modules: a square of pathSide() of them.
[[nodiscard]] std::string pathOf(const scan::ModuleGrid& grid);
[[nodiscard]] inline int pathSide(const scan::ModuleGrid& grid)
{
    return grid.size + 2 * quietModules;
}

}  // namespace spile::labels
