#pragma once

#include "core/base/job.hpp"
#include "core/ledger/database.hpp"

#include <vector>

/// Whether what is stored beside the entries that count is still right.
namespace spile::ledger {

/// What is wrong with the devices' keys, with the heads of their chains, and with the entries that
/// wait. Heads are made anew when their chain is next used, keys come with a day file that mends
/// (mending.hpp), and a waiting entry that has changed is dropped before it would count.
///
/// Errors    Cancelled; those of Database.
[[nodiscard]] Result<std::vector<Error>> wrongBesideEntries(Database& database, const Job& job);

}  // namespace spile::ledger
