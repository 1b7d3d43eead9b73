#pragma once

#include "core/base/file_system.hpp"
#include "core/ledger/database.hpp"
#include "core/ledger/fields.hpp"
#include "tests/bench/report.hpp"

#include <deque>
#include <map>

/// All rows of a ledger's database, to be inserted into another one by nothing but SQLite: the
/// least that anything which writes them can cost.
namespace spile::bench {

class BareRows {
public:
    /// Read the tables and indices of the database `file`, and all of its rows.
    explicit BareRows(const Path& file)
    {
        auto database = ledger::Database::open(file.string(), ledger::Database::Mode::Read);
        must(database);
        std::vector<std::string> tables;
        must(database->each(
            [&](const ledger::Row& row) {
                schema_.push_back(row.text(1));
                if (row.text(0) == "table") {
                    tables.push_back(row.text(2));
                }
                return Result<void>();
            },
            "SELECT type, sql, name FROM sqlite_schema WHERE type IN ('table', 'index') "
            "AND sql IS NOT NULL AND name NOT GLOB 'sqlite_*' ORDER BY type DESC, rowid"));
        for (const std::string& table : tables) {
            readTable(*database, table);
        }
    }

    /// Make `file` with the same tables and indices and insert the rows: first those that belong to
    /// no entry, then each entry as it came, with what the state says of it. One transaction, one
    /// statement a table, no triggers. Return how long it took, once the tables were there.
    [[nodiscard]] Times insertInto(const Path& file) const
    {
        auto database = ledger::Database::open(file.string(), ledger::Database::Mode::Write);
        must(database);
        for (const std::string& statement : schema_) {
            must(database->run(statement));
        }
        Times times;
        times.add([&] {
            auto transaction = ledger::Transaction::begin(*database);
            must(transaction);
            insert(*database, ofNoEntry_);
            for (const auto& [n, id] : entries_) {
                insert(*database, ofEntry_.at(id));
            }
            must(transaction->commit());
            constexpr int logPages = 1024;  // what the ledger leaves in the log
            must(database->checkpoint(logPages));
        });
        return times;
    }

private:
    struct OneRow {
        const std::string* insert;
        std::vector<ledger::Value> values;
    };

    static ledger::Value valueOf(const ledger::Row& row, int column)
    {
        const ByteView bytes = row.blob(column);
        switch (row.type(column)) {
            case ledger::Bound::Type::Integer:
                return row.integer(column);
            case ledger::Bound::Type::Text:
                return row.text(column);
            case ledger::Bound::Type::Blob:
                return Bytes(bytes.begin(), bytes.end());
            case ledger::Bound::Type::Null:
                break;
        }
        return {};
    }

    static ledger::Bound boundOf(const ledger::Value& value)
    {
        if (const auto* number = value.as<std::int64_t>()) {
            return *number;
        }
        if (const auto* text = value.as<std::string>()) {
            return *text;
        }
        const auto* bytes = value.as<Bytes>();
        return bytes != nullptr ? ledger::Bound(*bytes) : ledger::Bound(std::nullopt);
    }

    // Table `entry` is read before those of the state, as it was made before them.
    void readTable(ledger::Database& database, const std::string& table)
    {
        int id = -1;  // the column that names the entry which a row is about
        std::string places;
        must(database.eachOnce(
            [&](const ledger::Row& row) {
                if (row.text(1) == (table == "entry" ? "id" : "entry")) {
                    id = static_cast<int>(row.integer(0));
                }
                places += places.empty() ? "?" : ", ?";
                return Result<void>();
            },
            "SELECT * FROM pragma_table_info('" + table + "')"));
        statements_.push_back("INSERT INTO " + table + " VALUES(" + places + ")");
        must(database.eachOnce(
            [&](const ledger::Row& row) {
                OneRow read{&statements_.back(), {}};
                for (int column = 0; column < row.columns(); ++column) {
                    read.values.push_back(valueOf(row, column));
                }
                if (id < 0) {
                    ofNoEntry_.push_back(std::move(read));
                    return Result<void>();
                }
                const Bytes entry = *read.values.at(static_cast<std::size_t>(id)).as<Bytes>();
                if (table == "entry") {
                    entries_.emplace(row.integer(0), entry);
                }
                ofEntry_[entry].push_back(std::move(read));
                return Result<void>();
            },
            "SELECT * FROM " + table));
    }

    static void insert(ledger::Database& database, const std::vector<OneRow>& rows)
    {
        std::vector<ledger::Bound> bound;
        for (const OneRow& row : rows) {
            bound.clear();
            for (const ledger::Value& value : row.values) {
                bound.push_back(boundOf(value));
            }
            must(database.eachBound([](const ledger::Row&) { return Result<void>(); }, *row.insert,
                                    bound));
        }
    }

    std::vector<std::string> schema_;
    std::deque<std::string> statements_;  // they stay where they are
    std::vector<OneRow> ofNoEntry_;
    std::map<std::int64_t, Bytes> entries_;
    std::map<Bytes, std::vector<OneRow>> ofEntry_;
};

}  // namespace spile::bench
