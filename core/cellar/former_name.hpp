#pragma once

#include "core/ledger/database.hpp"

#include <string>

/// Whose successor a device that waits says it is.
namespace spile::cellar {

/// Return what the device was called before it went on with a new key, by its own first record,
/// which nobody but itself has signed: it is no proof. Empty if it says nothing of the sort.
[[nodiscard]] Result<std::string> formerNameOf(ledger::Database& database, const DeviceId& device);

}  // namespace spile::cellar
