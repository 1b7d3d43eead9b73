// The outlooks of the whole cellar in short.
#include "core/outlook/scene.hpp"

#include <algorithm>

namespace spile::outlook {

namespace {

}  // namespace

Result<std::vector<CalendarRow>> calendarOf(ledger::Database& database, const CellarModel& model,
                                            Instant now, const Job& job)
{
    std::vector<cellar::BarrelRow> filled;
    cellar::AfterBarrel after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(page, cellar::barrels(database, after, pageRows));
        more = page.size() == pageRows;
        if (more) {
            after = cellar::afterBarrel(page.back());
        }
        std::copy_if(page.begin(), page.end(), std::back_inserter(filled),
                     [](const cellar::BarrelRow& row) { return row.filled; });
    }
    std::vector<CalendarRow> rows;
    for (const cellar::BarrelRow& barrel : filled) {
        SPILE_ASSIGN(outlook, briefOutlook(database, model, barrel.barrel, now));
        rows.push_back({barrel.barrel, barrel.code, barrel.mark, barrel.beer, outlook.advice,
                        outlook.chanceNow, outlook.bestChance, outlook.bestFrom, outlook.best,
                        outlook.bestTo, outlook.horizon, outlook.next});
        if (!job.advance(rows.size(), filled.size())) {
            return fail(ErrorCode::Cancelled, "outlook");
        }
    }
    std::stable_sort(rows.begin(), rows.end(), [](const CalendarRow& a, const CalendarRow& b) {
        const bool noneA = a.advice == Advice::NoWindows;
        const bool noneB = b.advice == Advice::NoWindows;
        return noneA != noneB ? noneB : a.best < b.best;
    });
    return rows;
}

}  // namespace spile::outlook
