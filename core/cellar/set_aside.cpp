#include "core/cellar/set_aside.hpp"

#include "core/cellar/settle_query_text.hpp"

namespace spile::cellar {

Result<std::uint64_t> countSetAside(ledger::Database& database, const DeviceId& device)
{
    SPILE_ASSIGN(count, database.integer(0, query_text::countSetAsideOf, device));
    return static_cast<std::uint64_t>(count);
}

Result<std::vector<SetAsideRow>> setAsideOf(ledger::Database& database, const DeviceId& device,
                                            int limit)
{
    std::vector<SetAsideRow> rows;
    SPILE_TRY(database.each(
        [&](const ledger::Row& row) {
            rows.push_back({row.id<EntryId>(0), row.text(1), row.id<SubjectId>(2),
                            instantFromMs(row.integer(3))});
            return Result<void>();
        },
        query_text::setAsideOf, device, 0, limit));
    return rows;
}

}  // namespace spile::cellar
