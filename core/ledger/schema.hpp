#pragma once

#include "core/ledger/database.hpp"

/// The tables of the ledger itself. SCHEMA.md explains each.
namespace spile::ledger {

/// Marks the file as a Spile ledger ("SPIL").
inline constexpr std::int64_t applicationId = 0x5350494c;
/// Goes up by one with each migration of the ledger's own tables.
inline constexpr std::int64_t schemaVersion = 1;

/// Make the tables in a new, empty database.
[[nodiscard]] Result<void> createSchema(Database& database);

/// Check that an opened database is a Spile ledger that this version can write.
///
/// Errors    Damaged if it is something else; Unsupported if a newer version made it.
[[nodiscard]] Result<void> checkSchema(Database& database);

}  // namespace spile::ledger
