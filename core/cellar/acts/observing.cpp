#include "core/cellar/acts/observing.hpp"

#include "core/cellar/clocks.hpp"
#include "core/cellar/true_time.hpp"

#include <algorithm>

namespace spile::cellar {

namespace {

struct Moment {
    DeviceId device;
    BootId boot;
    Milliseconds sinceBoot{0};
    Instant shown;
};

Result<EntryId> record(Cellar& cellar, const Moment& moment, const ledger::EventTime& right,
                       const std::optional<SubjectId>& person)
{
    const ByteView boot = moment.boot.bytes();
    FieldSet fields;
    fields.set(Field::Boot, Bytes(boot.begin(), boot.end()));
    fields.set(Field::SinceBootMs, std::int64_t{moment.sinceBoot.count()});
    fields.set(Field::ShownMs, toMs(moment.shown));
    fields.setIfAny(Field::Person, person);
    SPILE_ASSIGN(entry, newEntry(observeKind, *SubjectId::fromBytes(moment.device.bytes()),
                                 std::move(fields), right));
    SPILE_ASSIGN(earlier, observationsToReplace(cellar.database(), moment.device, moment.boot));
    entry.overwrites = std::move(earlier);
    return recordOne(cellar, std::move(entry));
}

}  // namespace

Result<EntryId> observeOwnClock(Cellar& cellar, const ledger::EventTime& right,
                                const std::optional<SubjectId>& person)
{
    SPILE_TRY(needPerson(cellar, {.person = person}));
    const Clock& clock = cellar.outside().clock;
    return record(cellar,
                  {cellar.ledger().device(), clock.bootId(), clock.sinceBoot(),
                   std::clamp(clock.now(), ledger::earliestTime, ledger::latestTime)},
                  right, person);
}

Result<EntryId> observeClock(Cellar& cellar, const DeviceId& device, Instant shown,
                             const ledger::EventTime& now, const std::optional<SubjectId>& person)
{
    SPILE_TRY(needPerson(cellar, {.person = person}));
    const std::string name = device.hex().substr(0, 8);
    if (device == cellar.ledger().device()) {
        return fail(ErrorCode::Conflict, "device", name, "say the right time on it");
    }
    if (shown < ledger::earliestTime || shown > ledger::latestTime) {
        return fail(ErrorCode::OutOfRange, "shown_ms", "a time outside the calendar",
                    "before the year 10000");
    }
    SPILE_ASSIGN(newest, newestRecord(cellar.database(), device));
    if (!newest) {
        return fail(ErrorCode::NotFound, "record", name, "take in a day file of that device first");
    }
    const Instant last = clockOf(*newest);
    // It may be read to the minute, without the seconds.
    if (shown + std::chrono::minutes(1) <= last) {
        return fail(ErrorCode::Conflict, "clock", toIsoTime(shown),
                    "not before its newest record here, by its own clock " + toIsoTime(last) +
                        "; if it was set since, say the right time on it");
    }
    const Milliseconds since = std::max(shown - last, Milliseconds(0));
    const Clock& clock = cellar.outside().clock;
    SPILE_ASSIGN(own, observationOf(cellar.database(), cellar.ledger().device(), clock.bootId()));
    ledger::EventTime right = now;
    if (own) {
        right.time = setRight(now.time, trueTime(*own, clock.sinceBoot()));
    }
    return record(cellar, {device, newest->boot, newest->sinceBoot + since, shown}, right, person);
}

}  // namespace spile::cellar
