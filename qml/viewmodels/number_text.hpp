#pragma once

#include "core/plan/numbers.hpp"
#include "qml/viewmodels/formats.hpp"

#include <functional>

namespace spile::viewmodels {

/// Return a number of a work sheet as it is said: with its unit, and its range if it is an
/// estimate. `label` says what is missing where it cannot be told.
[[nodiscard]] QString textOf(const plan::SheetNumber& number, const Formats& formats,
                             const std::function<QString(const std::string&)>& label);

}  // namespace spile::viewmodels
