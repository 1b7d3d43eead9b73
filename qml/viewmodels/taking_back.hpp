#pragma once

#include "core/base/ids.hpp"
#include "qml/viewmodels/context.hpp"

#include <functional>

namespace spile::viewmodels {

/// Return what takes back the recorded `entry`: a record of its own says that it does not count,
/// and a notice offers to let it count again.
[[nodiscard]] std::function<void()> takeBack(Context& context, const EntryId& entry);

/// Return what lets a record count again whose taking back is the entry `voided`.
[[nodiscard]] std::function<void()> letCount(Context& context, const EntryId& voided);

}  // namespace spile::viewmodels
