#pragma once

#include "core/cellar/acts/act.hpp"

/// Saying what the time truly was when a device's clock showed another. What that start of the
/// device recorded is dated anew (true_time.hpp); the records stay as they are, and voiding the
/// observation takes it back.
namespace spile::cellar {

/// This device's clock is wrong: it is `right` now.
///
/// Errors    OutOfRange for a time outside the calendar; those of every act.
[[nodiscard]] Result<EntryId> observeOwnClock(Cellar& cellar, const ledger::EventTime& right,
                                              const std::optional<SubjectId>& person = {});

/// The clock of another device shows `shown`, while this one's shows `now`, which is right, or was
/// said to be wrong since the start: then the true time goes.
///
/// The other device may have been started anew since its newest record that is here; that start is
/// meant all the same, since its clock went on. A clock that was set since then shows nothing about
/// the time before.
///
/// Errors    NotFound if no record of that device is here; Conflict if it is this device, or if its
///           newest record is later by its own clock than `shown`; OutOfRange for a time outside
///           the calendar; those of every act.
[[nodiscard]] Result<EntryId> observeClock(Cellar& cellar, const DeviceId& device, Instant shown,
                                           const ledger::EventTime& now,
                                           const std::optional<SubjectId>& person = {});

}  // namespace spile::cellar
