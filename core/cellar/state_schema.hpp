#pragma once

#include "core/cellar/state.hpp"

namespace spile::cellar {

/// Goes up whenever a state table or the meaning of an entry changes; the tables are then rebuilt.
inline constexpr std::int64_t stateVersion = 11;

[[nodiscard]] KindStatements statementsOf(const KindSpec& kind);

/// Return the name of the state table of a kind, or of the rows of one of its list fields.
[[nodiscard]] std::string tableOf(std::string_view kind);
[[nodiscard]] std::string itemTableOf(std::string_view kind, Field field);

/// The statements that make the tables which are not one kind's: corrections, attachments,
/// unknown records, the barrels' summaries. %TEMP% stands for TEMP or nothing.
[[nodiscard]] const char* commonTables();

/// Make the tables of open sheets, work and flights, which are this device's own and no part of the
/// state; bring those of an older version up to this one. They keep what is in them.
[[nodiscard]] Result<void> makeDraftTables(ledger::Database& database);

/// Make the tables of what this device computed from the state, and what keeps `due_now` in step
/// with them. Requires the state's tables, still empty.
[[nodiscard]] Result<void> makeDueTables(ledger::Database& database);

/// The names of the tables of commonTables().
[[nodiscard]] std::span<const std::string_view> commonTableNames();

/// Fill in %TEMP% and %SCHEMA%.
[[nodiscard]] std::string placed(std::string script, bool temporary);

}  // namespace spile::cellar
