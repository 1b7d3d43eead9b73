#pragma once

#include "core/ledger/ledger.hpp"

/// Copies of a cellar's database that are made before its tables are changed to a new version's.
namespace spile::ledger {

/// Put a copy of the database beside it, read back and compared, named after its version and day.
///
/// Errors    StorageFull, Storage; Damaged if the copy is not what it should be. The database is
///           unchanged.
[[nodiscard]] Result<void> keepCopy(const Outside& outside, const CellarFolder& folder,
                                    Database& database, std::int64_t version);

/// Remove the copies that are older than 14 days.
[[nodiscard]] Result<void> removeOldCopies(const Outside& outside, const CellarFolder& folder);

}  // namespace spile::ledger
