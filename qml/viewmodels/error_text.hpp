#pragma once

#include "core/base/result.hpp"

#include <QString>

namespace spile::viewmodels {

/// Return what a person can do about `error`: what happened, what is safe, one way on.
[[nodiscard]] QString textOf(const Error& error);

}  // namespace spile::viewmodels
