#pragma once

#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"

#include <algorithm>
#include <optional>
#include <string_view>
#include <vector>

/// When a record counts as having happened. A device's clock may be wrong; an observation says what
/// the time was at a moment of one of its starts, and the clock that runs since that start, which
/// nobody sets, says the time of all that was recorded between then and its end. FORMAT.md, section
/// 3, has the rule.
namespace spile::cellar {

/// The kind of an observation; its subject is the device whose clock was looked at.
inline constexpr std::string_view observeKind = "clock_observe";

/// A clock that is less than this beside the true time is left as it is.
inline constexpr Milliseconds clockTolerance = std::chrono::minutes(2);
/// What is dated later than this after now is marked as being in the future.
inline constexpr Milliseconds futureTolerance = std::chrono::minutes(10);

[[nodiscard]] inline bool isInFuture(Instant at, Instant now) { return at - now > futureTolerance; }

/// What a device's clock showed when a record was made, which may be before `recorded`.
[[nodiscard]] inline Instant clockOf(const ledger::Entry& core)
{
    return core.wall.value_or(core.recorded);
}

/// Return `clock`, or `truth` where the two differ by clockTolerance or more.
[[nodiscard]] Instant setRight(Instant clock, Instant truth);

/// The true time at one moment after a start of a device.
struct Observed {
    EntryId entry;
    Milliseconds sinceBoot{0};
    Instant time;
};

/// Return the observation that is valid for that start of that device; none if nobody looked.
///
/// Source    FORMAT.md, section 3: the latest of those that are not voided, not set aside and not
///           replaced by another such one.
[[nodiscard]] Result<std::optional<Observed>> observationOf(ledger::Database& database,
                                                            const DeviceId& device,
                                                            const BootId& boot);
/// Return the observations of that start that a new one has to name as overwritten: all that are
/// not voided, the latest first, as many as an entry can name.
[[nodiscard]] Result<std::vector<EntryId>> observationsToReplace(ledger::Database& database,
                                                                 const DeviceId& device,
                                                                 const BootId& boot);

/// Return the true time of what was recorded `sinceBoot` after the same start, within the calendar.
///
/// Range     any `sinceBoot`; the sum is checked, and beyond the calendar it is the calendar's end.
[[nodiscard]] Instant trueTime(const Observed& observed, Milliseconds sinceBoot);

struct CountedTimes {
    Instant at;                    // when it happened
    Instant recorded;              // when it was recorded
    std::optional<Instant> clock;  // what the clock said instead of `at`, if it was set right

    /// Its place in time: a date in the future is one of recording, so that it never wins by that.
    [[nodiscard]] Instant when() const { return std::min(at, recorded); }
};

/// Return the times of a record, set right by `observed` if there is any.
[[nodiscard]] CountedTimes countedTimes(const ledger::Entry& core,
                                        const std::optional<Observed>& observed);
/// The same by what the records say.
[[nodiscard]] Result<CountedTimes> countedTimes(ledger::Database& database,
                                                const ledger::Entry& core);
/// The same of an entry by its id.
///
/// Errors    Damaged if it is not here; those of ledger::Database.
[[nodiscard]] Result<CountedTimes> countedTimes(ledger::Database& database, const EntryId& id);

}  // namespace spile::cellar
