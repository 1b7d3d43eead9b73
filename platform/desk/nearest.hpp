#pragma once

#include <string>
#include <vector>

namespace spile::desk {

/// Return up to three of `known` that look most like `name`, the nearest first: "gauge, purge". By
/// the number of letters to change, add or take away.
[[nodiscard]] std::string nearest(const std::string& name, std::vector<std::string> known);

}  // namespace spile::desk
