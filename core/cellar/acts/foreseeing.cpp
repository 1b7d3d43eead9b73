#include "core/cellar/acts/foreseeing.hpp"

#include "core/cellar/query_text.hpp"
#include "core/cellar/row_values.hpp"

#include <cmath>
#include <limits>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr double perThousand = 1e3;

Result<std::int64_t> thousandths(double chance)
{
    if (!(chance >= 0 && chance <= 1)) {
        return fail(ErrorCode::OutOfRange, "chance", std::to_string(chance), "0 to 1");
    }
    return std::llround(chance * perThousand);
}

Result<void> keepOne(Database& database, const KeptOutlook& outlook)
{
    std::optional<std::int64_t> nowE3;
    std::optional<std::int64_t> bestE3;
    std::optional<std::int64_t> fromMs;
    std::optional<std::int64_t> bestMs;
    std::optional<std::int64_t> bestToMs;
    if (outlook.best) {
        SPILE_ASSIGN(now, thousandths(outlook.best->chanceNow));
        SPILE_ASSIGN(best, thousandths(outlook.best->chance));
        nowE3 = now;
        bestE3 = best;
        fromMs = toMs(outlook.best->from);
        bestMs = toMs(outlook.best->at);
        bestToMs = toMs(outlook.best->to);
    }
    return database.execute(
        "INSERT OR REPLACE INTO outlook_now(barrel, fingerprint, next_ms, reason, advice, "
        "chance_now_e3, best_chance_e3, best_from_ms, best_ms, best_to_ms, horizon_ms, made_ms) "
        "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        outlook.barrel, outlook.fingerprint, toMs(outlook.nextTasting), outlook.reason,
        outlook.advice, nowE3, bestE3, fromMs, bestMs, bestToMs, toMs(outlook.horizon),
        toMs(outlook.made));
}

KeptOutlook readOutlook(const Row& row)
{
    KeptOutlook outlook;
    outlook.barrel = row.id<SubjectId>(0);
    outlook.fingerprint = row.text(1);
    outlook.nextTasting = instantFromMs(row.integer(2));
    outlook.reason = row.text(3);
    outlook.advice = row.text(4);
    if (!row.isNull(5)) {
        outlook.best = KeptOutlook::Best{
            static_cast<double>(row.integer(5)) / perThousand,
            static_cast<double>(row.integer(6)) / perThousand, instantFromMs(row.integer(7)),
            instantFromMs(row.integer(8)), instantFromMs(row.integer(9))};
    }
    outlook.horizon = instantFromMs(row.integer(10));
    outlook.made = instantFromMs(row.integer(11));
    return outlook;
}

}  // namespace

Result<std::map<SubjectId, std::string>> outlookFingerprints(Database& database)
{
    std::map<SubjectId, std::string> all;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            all.emplace(row.id<SubjectId>(0), row.text(1));
            return Result<void>();
        },
        "SELECT subject, fingerprint FROM barrel_fingerprint"));
    return all;
}

Result<std::int64_t> newestRecord(Database& database)
{
    return database.integer(0, "SELECT coalesce(max(n), 0) FROM entry");
}

Result<void> keepOutlooks(Cellar& cellar, const std::vector<KeptOutlook>& outlooks)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    for (const KeptOutlook& outlook : outlooks) {
        SPILE_TRY(keepOne(change.database(), outlook));
    }
    return change.commit();
}

Result<void> forgetOutlooks(Cellar& cellar, Instant made)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(change.database().execute("DELETE FROM outlook_now WHERE made_ms < ?", toMs(made)));
    return change.commit();
}

Result<std::optional<KeptOutlook>> keptOutlook(Database& database, const SubjectId& barrel)
{
    return database.first(readOutlook, query_text::outlookOfBarrel, barrel);
}

AfterForeseen afterForeseen(const ForeseenBarrel& row)
{
    const auto& best = row.outlook.best;
    return {best ? std::optional(best->at) : std::nullopt, row.outlook.barrel};
}

Result<std::vector<ForeseenBarrel>> foreseenBarrels(Database& database, const AfterForeseen& after,
                                                    int limit)
{
    constexpr std::int64_t last = std::numeric_limits<std::int64_t>::max();
    constexpr int own = 12;
    std::vector<ForeseenBarrel> rows;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            rows.push_back({readOutlook(row), row.text(own), row.text(own + 1), row.text(own + 2)});
            return Result<void>();
        },
        query_text::outlooksByBest, after.best ? toMs(*after.best) : last, after.barrel, limit));
    return rows;
}

}  // namespace spile::cellar
