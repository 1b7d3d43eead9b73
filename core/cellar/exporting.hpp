#pragma once

#include "core/cellar/field.hpp"
#include "core/cellar/kind.hpp"
#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"

#include <functional>
#include <string>
#include <variant>
#include <vector>

/// Everything that the records say, for a plain export that needs no Spile to read.
///
/// Errors    those of ledger::Database, and what `use` returns.
namespace spile::cellar {

/// A value of a record under its name. A field that this version does not know is called by its
/// number.
struct NamedValue {
    std::string name;
    ledger::Value value;
    std::span<const ItemColumn> items = {};  // of a list: the names of its columns
};

struct ExportedEntry {
    EntryId id;
    ledger::Entry core;
    std::vector<NamedValue> fields;
};
/// All entries that count, chain by chain; first those of the device heard of first. Return how
/// many are damaged so that they cannot be read.
[[nodiscard]] Result<std::uint64_t> eachEntry(
    ledger::Database& database, const std::function<Result<void>(const ExportedEntry&)>& use);

/// A cell of a table: nothing, an integer, text, or an id in hexadecimal digits.
using Cell = std::variant<std::monostate, std::int64_t, std::string>;
/// The cell as it stands in a CSV file (RFC 4180): text in quotes, and what a spreadsheet would
/// take for a formula behind an apostrophe.
[[nodiscard]] std::string csvCell(const Cell& cell);

/// The rows of one kind with all corrections in them, those that were voided left out.
struct ExportedTable {
    std::string name;  // the kind, or the kind and its list field
    std::string kind;
    std::vector<std::string> columns;  // the first: entry, subject, device, seq, at_ms, clock_ms
};
[[nodiscard]] std::vector<ExportedTable> exportedTables();
[[nodiscard]] Result<void> eachRow(ledger::Database& database, const ExportedTable& table,
                                   const std::function<Result<void>(std::span<const Cell>)>& use);

/// The photos that are on this device.
[[nodiscard]] Result<std::vector<Sha256>> photosHere(ledger::Database& database);

}  // namespace spile::cellar
