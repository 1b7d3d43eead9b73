#pragma once

#include "core/base/ids.hpp"
#include "core/base/job.hpp"
#include "core/base/time.hpp"
#include "core/cellar/queries.hpp"
#include "core/outlook/cellar_model.hpp"
#include "core/outlook/readiness.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// The outlook of one barrel: the course of each attribute with its uncertainty, the chance of
/// being in the windows by date, the span in which it is highest, and the next useful tasting.
/// Levels are on the 0-10 line; a screen shows them on the ladder (scoreOfLine()).
namespace spile::outlook {

/// Where a level probably lies at a time: its 5, 50 and 95 % points.
struct LevelPoint {
    Instant at;
    double low = 0, middle = 0, high = 0;
    double within = 1;  // the chance of lying in the window; 1 without one
};

/// A score as it was given.
struct SeenScore {
    EntryId taste;
    Instant at;
    SubjectId person;
    std::string name;  // of the person
    double line = 0;
};

enum class WindowSource : std::uint8_t { None, ByHand, Taught };

struct AttributeOutlook {
    std::string attribute;
    WindowSource source = WindowSource::None;
    std::optional<LineWindow> window;
    int directions = 0;  // taps of more, right or too much that taught it
    bool rising = true;
    std::vector<LevelPoint> course;  // from the fill to the horizon, every two weeks
    std::vector<SeenScore> scores;   // of this fill, the oldest first
    double priorShare = 1;           // how much of the uncertainty is left: above 0.5 it is mostly
                                     // what is usual, hardly what was tasted here
    // The last sitting beside what the earlier ones foresaw: the chance of lying so far off by
    // itself; none before the third.
    std::optional<double> lastTail;
    double lastMean = 0, lastForeseen = 0;
    std::optional<EntryId> doubtfulScore;  // a score that does not fit, with its chance
    double doubt = 0;
    std::optional<Instant> entryEarly, entryMiddle,
        entryLate;              // 10, 50, 90 % that it is in or past
    double neverByHorizon = 0;  // the chance that it does not come to its window by then
};

struct ChancePoint {
    Instant at;
    double within = 0;  // all windowed attributes inside together
    double past = 0;    // at least one has gone too far
};

/// Why the next tasting is when it is.
enum class TastingReason : std::uint8_t {
    Decides,       // it may well end in pulling
    BeforeTooFar,  // later, something may have gone too far
    LooksAgain,    // nothing decides yet: not longer without a look
    Habit,         // no windows or nothing known: six months, then monthly
    AtOnce,        // an alarm asks for it
};

struct NextTasting {
    Instant at;
    TastingReason reason = TastingReason::Habit;
    double decides = 0;  // the chance that it ends in pulling
};

/// What to do, by the chances alone; the brewer decides.
enum class Advice : std::uint8_t { Wait, Pull, TooFar, NoWindows };

struct BarrelOutlook {
    SubjectId barrel;
    Instant filled, now, horizon;
    std::vector<AttributeOutlook> attributes;  // windowed ones first
    std::vector<ChancePoint> chances;          // from now to the horizon, weekly; empty without
                                               // windows
    Advice advice = Advice::NoWindows;
    double chanceNow = 0, bestChance = 0;
    Instant bestFrom, best, bestTo;  // where the chance is highest
    std::string weakest;             // the attribute that limits it there
    NextTasting next;
};

/// Return the outlook of `barrel` at `now`.
///
/// Errors    NotFound if the records do not have it, or it is empty; those of ledger::Database.
[[nodiscard]] Result<BarrelOutlook> outlookOf(ledger::Database& database, const CellarModel& model,
                                              const SubjectId& barrel, Instant now);

/// What may be changed in a what-if; all may be left out.
struct WhatIf {
    std::optional<Temperature> temperature;  // of the place it moves to, from now on
    std::optional<double> replacedFraction;  // a top-up now, as a fraction of what it holds
    std::optional<SubjectId> blendedWith;    // a barrel to mix it with now
    double blendedShare = 0;                 // the other's share, 0 to 1
};
/// The same, as it would be after the change.
[[nodiscard]] Result<BarrelOutlook> outlookIf(ledger::Database& database, const CellarModel& model,
                                              const SubjectId& barrel, Instant now,
                                              const WhatIf& change);

/// Where the level of an attribute lies at a time, and how sure that is.
struct LevelNow {
    double mean = 0, deviation = 0;
    int scores = 0;  // of this fill, on which it rests besides what is usual
};
/// Return the levels of these attributes in a barrel now, in their order.
///
/// Errors    as outlookOf().
[[nodiscard]] Result<std::vector<LevelNow>> levelsOf(ledger::Database& database,
                                                     const CellarModel& model,
                                                     const SubjectId& barrel,
                                                     std::span<const std::string> attributes,
                                                     Instant now);

/// A barrel in the calendar of the cellar.
struct CalendarRow {
    SubjectId barrel;
    std::string code, mark, beer;
    Advice advice = Advice::NoWindows;
    double chanceNow = 0, bestChance = 0;
    Instant bestFrom, best, bestTo, horizon;
    NextTasting next;
};

/// Return the outlooks of all filled barrels in short, by the time of their best span.
///
/// Errors    Cancelled; those of ledger::Database.
[[nodiscard]] Result<std::vector<CalendarRow>> calendarOf(ledger::Database& database,
                                                          const CellarModel& model, Instant now,
                                                          const Job& job);

}  // namespace spile::outlook
