#pragma once

#include "core/cellar/acts/act.hpp"

#include <map>
#include <string>
#include <vector>

/// Work sheets that are being worked through on this device. Where the worker is, what was filled
/// in and when a timer ends are durable before a call returns, and belong to this device; each
/// step that is over is an entry at once, with the facts that it recorded.
namespace spile::cellar {

/// What was filled in: an integer in the unit that its name says, as in a field, or a word.
struct WorkValue {
    std::optional<std::int64_t> number = {};
    std::string text = {};

    friend bool operator==(const WorkValue&, const WorkValue&) = default;
};
using WorkValues = std::map<std::string, WorkValue>;

/// When a timer ends, by both clocks: sleep and a wall clock that is set do not bend it.
struct WorkTimer {
    Instant begun, wallEnd;
    Milliseconds bootEnd{0};
    BootId bootId;
    Milliseconds planned{0};
    std::optional<Milliseconds> pausedLeft = {};  // it stands still, with that much left

    friend bool operator==(const WorkTimer&, const WorkTimer&) = default;
};

struct OpenWork {
    SubjectId run;
    std::string sheet;  // its name
    SubjectId barrel;   // or the lot
    SubjectId person;
    std::string step;
    Instant begun;
    bool stopped = false;  // by the worker, to be gone on with later
    std::optional<WorkTimer> timer;
    WorkValues values;
};

/// Errors    of all: those of every act; NotFound for work that is not open.
///
/// The work may be on a lot as well: then that stands for the barrel.
[[nodiscard]] Result<SubjectId> beginWork(Cellar& cellar, const std::string& sheet,
                                          const std::string& firstStep, const SubjectId& barrel,
                                          const SubjectId& person);
/// All open work, the oldest first.
[[nodiscard]] Result<std::vector<OpenWork>> openWork(Cellar& cellar);
[[nodiscard]] Result<OpenWork> readWork(Cellar& cellar, const SubjectId& run);

/// Keep what was filled in under `name`; none takes it back.
[[nodiscard]] Result<void> keepValue(Cellar& cellar, const SubjectId& run, const std::string& name,
                                     const std::optional<WorkValue>& value);
/// Begin the timer of the step that is shown; an earlier one is replaced.
[[nodiscard]] Result<WorkTimer> startTimer(Cellar& cellar, const SubjectId& run,
                                           Milliseconds planned);
/// Stop for now. A timer goes on meanwhile, unless it measures what stops too: then it is paused.
[[nodiscard]] Result<void> stopWork(Cellar& cellar, const SubjectId& run, bool pausesTimer);
/// Go on with it, a paused timer with what was left.
[[nodiscard]] Result<void> goOnWithWork(Cellar& cellar, const SubjectId& run);

/// How a step ended.
namespace outcome {
inline constexpr const char* done = "done";
inline constexpr const char* early = "done early";  // before its timer was over
inline constexpr const char* skipped = "skipped";
}  // namespace outcome

struct StepEnd {
    std::string outcome = outcome::done;
    std::string reason = {};  // why it was skipped
    /// What was filled in at the step.
    std::map<std::string, std::int64_t> values = {};
    std::map<std::string, std::string> words = {};  // and what was chosen
    std::string nextStep = {};                      // empty: the work is over
    std::optional<SubjectId> person = {};           // who did it; none: who began the work
};
/// End the step that is shown: record it with `facts`, which answer it, in one transaction, and go
/// to the next one, or end the work.
///
/// Errors    besides: Malformed if a step is skipped without a reason.
[[nodiscard]] Result<EntryId> endStep(Cellar& cellar, const SubjectId& run, const StepEnd& end,
                                      std::vector<ledger::NewEntry> facts = {});

/// Give the work up. The steps that were recorded stay.
[[nodiscard]] Result<void> giveUpWork(Cellar& cellar, const SubjectId& run);

}  // namespace spile::cellar
