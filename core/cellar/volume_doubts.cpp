#include "core/cellar/volume_doubts.hpp"

#include "core/cellar/settle_query_text.hpp"
#include "core/cellar/settling.hpp"

#include <algorithm>
#include <limits>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr std::int64_t twiceWithinMs = std::int64_t{10} * 60 * 1000;

Result<std::vector<VolumeRecord>> readRecords(Database& database, std::string_view sql,
                                              const SubjectId& barrel, std::int64_t sinceMs)
{
    std::vector<VolumeRecord> records;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            records.push_back({row.text(0), row.id<EntryId>(1), instantFromMs(row.integer(2)),
                               row.id<DeviceId>(3), row.integerIfAny(4), row.integer(5) != 0});
            return Result<void>();
        },
        sql, barrel, sinceMs));
    return records;
}

Result<std::vector<VolumeRecord>> ofFill(Database& database, std::string_view sql,
                                         const SubjectId& barrel)
{
    SPILE_ASSIGN(since, database.first([](const Row& row) { return row.integer(0); },
                                       query_text::filledSince, barrel));
    return since ? readRecords(database, sql, barrel, *since) : Result<std::vector<VolumeRecord>>();
}

// A correction, be it to the same value, says that somebody has looked.
bool isTwice(const VolumeRecord& one, const VolumeRecord& next)
{
    return !one.amended && !next.amended && one.device != next.device &&
           toMs(next.at) - toMs(one.at) <= twiceWithinMs;
}

std::int64_t mostHeld(const VolumeFacts& facts)
{
    if (facts.fullMl) {
        return *facts.fullMl + *facts.fullMl / 50;
    }
    return facts.sizeMl ? *facts.sizeMl + *facts.sizeMl / 10
                        : std::numeric_limits<std::int64_t>::max();
}

}  // namespace

Result<void> noteVolumeDoubts(Database& database, const SubjectId& barrel, const VolumeFacts& facts)
{
    SPILE_ASSIGN(gauges, readRecords(database, query_text::gaugesSince, barrel, facts.sinceMs));
    const bool twice = std::adjacent_find(gauges.begin(), gauges.end(), isTwice) != gauges.end();
    std::int64_t most = facts.filledMl.value_or(0);
    for (const VolumeRecord& gauge : gauges) {
        most = std::max(most, gauge.volumeMl.value_or(0));
    }
    SPILE_TRY(noteBarrel(database, Unsettled::GaugedTwice, barrel, twice));
    SPILE_TRY(noteBarrel(database, Unsettled::Overfull, barrel, most > mostHeld(facts)));
    return noteBarrel(database, Unsettled::Overdrawn, barrel, facts.leftMl.value_or(0) < 0);
}

Result<void> forgetVolumeDoubts(Database& database, const SubjectId& barrel)
{
    for (const Unsettled what :
         {Unsettled::GaugedTwice, Unsettled::Overfull, Unsettled::Overdrawn}) {
        SPILE_TRY(noteBarrel(database, what, barrel, false));
    }
    return {};
}

Result<std::vector<VolumeRecord>> gaugesTwice(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(gauges, ofFill(database, query_text::gaugesSince, barrel));
    std::vector<VolumeRecord> twice;
    for (std::size_t i = 0; i < gauges.size(); ++i) {
        const bool after = i > 0 && isTwice(gauges[i - 1], gauges[i]);
        const bool before = i + 1 < gauges.size() && isTwice(gauges[i], gauges[i + 1]);
        if (after || before) {
            twice.push_back(gauges[i]);
        }
    }
    return twice;
}

Result<std::vector<VolumeRecord>> largestVolumes(Database& database, const SubjectId& barrel)
{
    return ofFill(database, query_text::largestVolumes, barrel);
}

Result<std::vector<VolumeRecord>> largestDraws(Database& database, const SubjectId& barrel)
{
    return ofFill(database, query_text::largestDraws, barrel);
}

}  // namespace spile::cellar
