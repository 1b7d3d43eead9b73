#include "core/cellar/set_aside.hpp"

#include "core/cellar/settle_query_text.hpp"
#include "core/cellar/true_time.hpp"

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
    std::optional<BootId> boot;  // whose observation that is
    std::optional<Observed> observed;
    SPILE_TRY(database.each(
        [&](const ledger::Row& row) -> Result<void> {
            rows.push_back({row.id<EntryId>(0), row.text(1), row.id<SubjectId>(2), {}});
            const auto core = ledger::decodeCore(row.blob(3));
            if (!core) {
                return {};  // damaged: listed all the same
            }
            if (boot != core->boot) {
                SPILE_ASSIGN(found, observationOf(database, device, core->boot));
                observed = found;
                boot = core->boot;
            }
            rows.back().at = countedTimes(*core, observed).at;
            return {};
        },
        query_text::setAsideOf, device, 0, limit));
    return rows;
}

}  // namespace spile::cellar
