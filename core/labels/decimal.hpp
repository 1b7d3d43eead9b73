#pragma once

#include <string>

namespace spile::labels {

/// A number in plain decimals, to four places, without needless zeros; the same in every locale.
[[nodiscard]] std::string number(double value);
}  // namespace spile::labels
