#pragma once

#include "core/cellar/cellar.hpp"
#include "tests/support/naive_cellar.hpp"

#include <string>

namespace spile::support {

/// Return where the state tables of `cellar` say something else than `said`; empty if nowhere.
[[nodiscard]] std::string differenceFrom(cellar::Cellar& cellar, const NaiveCellar& said);

}  // namespace spile::support
