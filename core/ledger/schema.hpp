#pragma once

#include "core/base/job.hpp"
#include "core/ledger/database.hpp"

/// The tables of the ledger itself. SCHEMA.md explains each.
namespace spile::ledger {

/// Marks the file as a Spile ledger ("SPIL").
inline constexpr std::int64_t applicationId = 0x5350494c;
/// Goes up by one with each migration of the ledger's own tables.
inline constexpr std::int64_t schemaVersion = 4;

/// Entries are append-only, but for the damaged one that is replaced by what it was.
inline constexpr const char* entriesNeverChange =
    "CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry "
    "BEGIN SELECT RAISE(ABORT, 'entries are append-only'); END;";
inline constexpr const char* entriesMayChange = "DROP TRIGGER entry_is_never_changed;";

/// Make the tables in a new, empty database.
[[nodiscard]] Result<void> createSchema(Database& database);

/// Return the version of the ledger's tables in an opened database, which may be newer than
/// schemaVersion.
///
/// Errors    Damaged if it is no Spile ledger.
[[nodiscard]] Result<std::int64_t> storedVersion(Database& database);

/// Bring the tables of an older version up to this one, in one transaction.
///
/// Errors    Cancelled, and those of Database: it is of the older version still.
[[nodiscard]] Result<void> renewSchema(Database& database, const Job& job);

}  // namespace spile::ledger
