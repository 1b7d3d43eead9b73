#pragma once

#include "core/base/job.hpp"
#include "core/cellar/acts/foreseeing.hpp"
#include "core/outlook/barrel_outlook.hpp"

/// The outlooks of the cellar in short, in the words that the cellar keeps (tastingReason, advice).
namespace spile::plan {

[[nodiscard]] const char* wordOf(outlook::TastingReason reason);
[[nodiscard]] const char* wordOf(outlook::Advice advice);

/// Return the outlooks of all filled barrels as keepOutlooks() keeps them, computed at `now`.
///
/// Errors    those of outlook::calendarOf().
[[nodiscard]] Result<std::vector<cellar::KeptOutlook>> foreseenOf(ledger::Database& database,
                                                                  const outlook::CellarModel& model,
                                                                  Instant now, const Job& job);

/// A chance in tenths, 0 to 10, as it is said in words; 0 and 10 mean less than half of one and
/// more than nine and a half. Requires 0 <= chance <= 1.
[[nodiscard]] int inTen(double chance);

}  // namespace spile::plan
