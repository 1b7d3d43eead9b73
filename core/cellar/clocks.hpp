#pragma once

#include "core/base/clock.hpp"
#include "core/cellar/true_time.hpp"

#include <string>

/// What the records say about the clocks of devices. Which side is right nobody can say but a
/// person: acts/observing.hpp.
namespace spile::cellar {

/// Return the newest record of a device that is here, of its longest branch; none if none is here.
///
/// Errors    Damaged; those of ledger::Database.
[[nodiscard]] Result<std::optional<ledger::Entry>> newestRecord(ledger::Database& database,
                                                                const DeviceId& device);

/// What is known of one device's clock.
struct DeviceClock {
    Instant newest;                // its newest record here, by its clock
    std::optional<Instant> truly;  // when that was, if somebody looked at its clock since the start
    std::optional<EntryId> valid;  // the observation that says so; voiding it takes it back
};
/// None if there is no record of it.
[[nodiscard]] Result<std::optional<DeviceClock>> clockOfDevice(ledger::Database& database,
                                                               const DeviceId& device);

/// What makes this device's clock doubtful, at this moment.
struct ClockDoubt {
    /// So far it has moved since this device's newest record, against the clock that runs since the
    /// start; none below clockTolerance, or if the machine has been started anew since.
    std::optional<Milliseconds> jumped;
    /// This device's newest record, if the clock stands more than a day before it.
    std::optional<Instant> behindOwn;
    /// The device whose newest record is furthest in the future, by this clock.
    struct Ahead {
        DeviceId device;
        std::string name;  // the beginning of its id if nobody gave it one
        Instant recorded;
    };
    std::optional<Ahead> ahead;

    [[nodiscard]] bool any() const { return jumped || behindOwn || ahead; }
};
[[nodiscard]] Result<ClockDoubt> clockDoubt(ledger::Database& database, const Clock& clock);

}  // namespace spile::cellar
