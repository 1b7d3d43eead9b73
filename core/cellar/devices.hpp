#pragma once

#include "core/ledger/trust.hpp"

#include <string>
#include <vector>

/// The devices that were ever admitted to a cellar, and what they may do.
namespace spile::cellar {

struct DeviceRow {
    DeviceId device;
    std::string name;
    ledger::Membership membership;
    bool own = false;
};

struct Devices {
    std::vector<DeviceRow> rows;   ///< by their names, as barrels are ordered by their marks
    ledger::Membership ownStands;  ///< of this device, which may not be among them
    DeviceId own;

    /// None if nobody has admitted it.
    [[nodiscard]] const DeviceRow* find(const DeviceId& device) const;
    /// The names of those that may admit others, this one too.
    [[nodiscard]] std::vector<std::string> admitters() const;
};

/// Return all of them. Who belongs is computed once for all, so that the work grows with the number
/// of devices and not with its square.
[[nodiscard]] Result<Devices> devicesOf(ledger::Database& database);

}  // namespace spile::cellar
