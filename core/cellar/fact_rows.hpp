#pragma once

#include "core/cellar/queries.hpp"
#include "core/cellar/row_values.hpp"

/// Reading the columns that every fact has: SPILE_FACT_COLUMNS of query_text.hpp.
namespace spile::cellar {

inline constexpr int factColumns = 9;

inline void readFact(const ledger::Row& row, FactRow& fact)
{
    fact.entry = row.id<EntryId>(0);
    fact.at = instantFromMs(row.integer(1));
    fact.person = row.text(2);
    fact.device = row.text(3);
    fact.deviceId = row.id<DeviceId>(4);
    fact.note = row.text(5);
    fact.amended = row.integer(6) != 0;
    fact.twoValues = row.integer(7) != 0;
    fact.clock = instantIfAny(row, 8);
}

/// Reads one kind of fact of a subject; `more` reads the columns that are the kind's own.
template <class Fact, class Key, class More>
Result<std::vector<Fact>> factsOf(ledger::Database& database, std::string_view sql, const Key& key,
                                  More more)
{
    std::vector<Fact> found;
    SPILE_TRY(database.each(
        [&](const ledger::Row& row) {
            Fact& fact = found.emplace_back();
            readFact(row, fact);
            more(row, fact);
            return Result<void>();
        },
        sql, key));
    return found;
}

}  // namespace spile::cellar
