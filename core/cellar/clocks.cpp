#include "core/cellar/clocks.hpp"

#include "core/cellar/query_text.hpp"

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

struct Newest {
    DeviceId device;
    std::string name;
    bool own = false;
    ledger::Entry core;
};

// The newest record of each branch of each device, if it counts. The owner's key has no clock: it
// signs on any machine.
Result<std::vector<Newest>> newestOfAll(Database& database)
{
    std::vector<Newest> all;
    SPILE_TRY(database.each(
        [&](const Row& row) -> Result<void> {
            auto core = ledger::decodeCore(row.blob(3));
            if (!core) {
                return {};  // damaged; those of the others can be told
            }
            const auto device = row.id<DeviceId>(0);
            all.push_back({device, row.isNull(1) ? device.hex().substr(0, 8) : row.text(1),
                           row.integer(2) != 0, std::move(*core)});
            return {};
        },
        query_text::newestRecords));
    return all;
}

// What this device itself can know of its clock.
void lookBack(const ledger::Entry& newest, const Clock& clock, ClockDoubt& doubt)
{
    const Instant now = std::clamp(clock.now(), ledger::earliestTime, ledger::latestTime);
    if (newest.recorded - now > std::chrono::days(1)) {
        doubt.behindOwn = newest.recorded;
    }
    if (newest.boot == clock.bootId()) {
        const Milliseconds moved = (now - clockOf(newest)) - (clock.sinceBoot() - newest.sinceBoot);
        if (std::chrono::abs(moved) >= clockTolerance) {
            doubt.jumped = moved;
        }
    }
}

}  // namespace

Result<std::optional<ledger::Entry>> newestRecord(Database& database, const DeviceId& device)
{
    SPILE_ASSIGN(core,
                 database.first([](const Row& row) { return ledger::decodeCore(row.blob(0)); },
                                query_text::newestRecordOf, device));
    if (!core) {
        return std::optional<ledger::Entry>();
    }
    if (!*core) {
        return passOn(*core);
    }
    return std::optional(std::move(**core));
}

Result<std::optional<DeviceClock>> clockOfDevice(Database& database, const DeviceId& device)
{
    SPILE_ASSIGN(newest, newestRecord(database, device));
    if (!newest) {
        return std::optional<DeviceClock>();
    }
    DeviceClock found{clockOf(*newest), {}, {}};
    SPILE_ASSIGN(observed, observationOf(database, device, newest->boot));
    if (observed) {
        found.truly = trueTime(*observed, newest->sinceBoot);
        found.valid = observed->entry;
    }
    return std::optional(found);
}

Result<ClockDoubt> clockDoubt(Database& database, const Clock& clock)
{
    ClockDoubt doubt;
    SPILE_ASSIGN(all, newestOfAll(database));
    for (const Newest& newest : all) {
        if (newest.own) {
            lookBack(newest.core, clock, doubt);
            continue;
        }
        SPILE_ASSIGN(times, countedTimes(database, newest.core));
        if (isInFuture(times.recorded, clock.now()) &&
            (!doubt.ahead || times.recorded > doubt.ahead->recorded)) {
            doubt.ahead = {newest.device, newest.name, times.recorded};
        }
    }
    return doubt;
}

}  // namespace spile::cellar
