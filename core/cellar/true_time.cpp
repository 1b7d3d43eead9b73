#include "core/cellar/true_time.hpp"

#include <algorithm>
#include <set>
#include <vector>

namespace spile::cellar {

namespace {

struct Found {
    Observed observed;
    std::vector<EntryId> overwrites;
};

// Those of one start that are not voided, the latest first.
Result<std::vector<Found>> observationsOf(ledger::Database& database, const DeviceId& device,
                                          const BootId& boot)
{
    std::vector<Found> all;
    SPILE_TRY(database.each(
        [&](const ledger::Row& row) -> Result<void> {
            auto core = ledger::decodeCore(row.blob(3));
            if (!core) {
                return {};  // damaged; its device records on
            }
            all.push_back(
                {{row.id<EntryId>(0), Milliseconds(row.integer(1)), instantFromMs(row.integer(2))},
                 std::move(core->overwrites)});
            return {};
        },
        "SELECT o.entry, o.since_boot_ms, o.at_ms, e.core FROM state_clock_observe AS o JOIN entry "
        "AS e ON e.id = o.entry WHERE o.subject = ? AND o.boot = ? AND o.voided = 0 AND "
        "o.since_boot_ms IS NOT NULL ORDER BY o.when_ms DESC, o.device DESC, o.seq DESC, o.entry "
        "DESC",
        device, boot));
    return all;
}

bool areNear(Instant a, Instant b) { return std::chrono::abs(a - b) < clockTolerance; }

}  // namespace

Instant setRight(Instant clock, Instant truth) { return areNear(clock, truth) ? clock : truth; }

Result<std::optional<Observed>> observationOf(ledger::Database& database, const DeviceId& device,
                                              const BootId& boot)
{
    SPILE_ASSIGN(all, observationsOf(database, device, boot));
    std::set<EntryId> replaced;
    for (const Found& found : all) {
        replaced.insert(found.overwrites.begin(), found.overwrites.end());
    }
    const auto latest = std::find_if(all.begin(), all.end(), [&](const Found& found) {
        return !replaced.contains(found.observed.entry);
    });
    return latest == all.end() ? std::nullopt : std::optional(latest->observed);
}

Result<std::vector<EntryId>> observationsToReplace(ledger::Database& database,
                                                   const DeviceId& device, const BootId& boot)
{
    SPILE_ASSIGN(all, observationsOf(database, device, boot));
    all.resize(std::min(all.size(), ledger::overwritesMax));
    std::vector<EntryId> ids;
    std::transform(all.begin(), all.end(), std::back_inserter(ids),
                   [](const Found& found) { return found.observed.entry; });
    return ids;
}

Instant trueTime(const Observed& observed, Milliseconds sinceBoot)
{
    // Both are at most 2^53 in a record, so neither the difference nor the sum can overflow there.
    constexpr Milliseconds most{std::int64_t{1} << 60U};
    const Milliseconds after =
        std::clamp(sinceBoot, -most, most) - std::clamp(observed.sinceBoot, -most, most);
    const Instant from = std::clamp(observed.time, ledger::earliestTime, ledger::latestTime);
    return std::clamp(from + after, ledger::earliestTime, ledger::latestTime);
}

CountedTimes countedTimes(const ledger::Entry& core, const std::optional<Observed>& observed)
{
    CountedTimes times{core.eventTime(), core.recorded, {}};
    if (!observed || core.kind == observeKind) {
        return times;
    }
    const Instant truth = trueTime(*observed, core.sinceBoot);
    times.recorded = setRight(core.recorded, truth);
    if (!core.at) {
        times.at = times.recorded;
    } else if (areNear(core.at->time, clockOf(core))) {
        // It repeats what the clock showed, to say in which zone that was.
        times.at = setRight(core.at->time, truth);
    }
    if (times.at != core.eventTime()) {
        times.clock = core.at ? core.at->time : clockOf(core);
    }
    return times;
}

Result<CountedTimes> countedTimes(ledger::Database& database, const ledger::Entry& core)
{
    SPILE_ASSIGN(observed, observationOf(database, core.device, core.boot));
    return countedTimes(core, observed);
}

Result<CountedTimes> countedTimes(ledger::Database& database, const EntryId& id)
{
    SPILE_ASSIGN(
        core, database.first([](const ledger::Row& row) { return ledger::decodeCore(row.blob(0)); },
                             "SELECT core FROM entry WHERE id = ?", id));
    if (!core) {
        return fail(ErrorCode::Damaged, "ledger.db", "a record is missing: " + id.hex());
    }
    if (!*core) {
        return passOn(*core);
    }
    return countedTimes(database, **core);
}

}  // namespace spile::cellar
