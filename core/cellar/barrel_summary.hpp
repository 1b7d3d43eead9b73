#pragma once

#include "core/base/ids.hpp"
#include "core/base/time.hpp"
#include "core/ledger/database.hpp"

#include <optional>
#include <string>

namespace spile::cellar {

/// What there is to do next with a barrel, and from when on it is due. No date: it rests, or it
/// waits for the brewer.
struct NextStep {
    std::string step;  // "fill", "wet the wood", "check for leaks", "taste", "empty"
    std::optional<Instant> due;
    bool byHabit = false;  // and nobody asked for it: an outlook that knows more may name a day
};

/// What is known of a barrel when its next step is looked for.
struct BarrelFacts {
    bool filled = false;
    std::optional<Instant> filledAt;
    bool filledToTheDay = false;         // not only "some time in that month"
    std::optional<Instant> lastLooked;   // checked, gauged, drawn from or tasted, in this fill
    std::optional<Instant> lastTasted;   // in this fill
    std::optional<std::string> verdict;  // the latest in this fill
    std::optional<Instant> verdictAt;
    std::optional<Instant> verdictUntil;
    std::optional<std::string> nextUse;  // of an empty barrel, as its emptying said,
    std::optional<Instant> wetUntil;     // and by when
};

/// Return the next step by the trade's habit: look for leaks an hour, a day, three and seven days
/// after filling, taste first at six months and then monthly, unless a verdict says otherwise. A
/// look counts for all times before it; a tasting in the first week is of the beer as it went in.
/// A tasting ends the wait that a verdict asked for. An empty barrel has its next use's deadline.
///
/// Source    common practice, no source. An outlook takes its place where it knows more
///           (acts/foreseeing.hpp).
[[nodiscard]] NextStep nextStep(const BarrelFacts& facts);

/// Make the summary row of one barrel anew from its facts.
[[nodiscard]] Result<void> writeBarrelSummary(ledger::Database& database, const SubjectId& barrel);

}  // namespace spile::cellar
