#pragma once

#include "core/plan/numbers.hpp"
#include "core/plan/sheet.hpp"

/// Working a sheet through: which step follows, what is still to be filled in, and what a step
/// records when it is over.
namespace spile::plan {

/// The step with that name; none if the sheet has none.
[[nodiscard]] const Step* findStep(const Sheet& sheet, std::string_view name);
[[nodiscard]] bool holds(const std::optional<Condition>& condition,
                         const cellar::WorkValues& values);
/// The first step, and the one after `name`, of those whose conditions hold. None: it is over.
[[nodiscard]] const Step* firstStep(const Sheet& sheet, const cellar::WorkValues& values);
[[nodiscard]] const Step* stepAfter(const Sheet& sheet, std::string_view name,
                                    const cellar::WorkValues& values);
/// Which step it is, from 1, and of how many, as far as can be told now.
struct Place {
    int step = 0;
    int steps = 0;
};
[[nodiscard]] Place placeOf(const Sheet& sheet, std::string_view name,
                            const cellar::WorkValues& values);

/// The asks and facts of a step that are shown now.
[[nodiscard]] std::vector<std::string> shownNames(const std::vector<Part>& parts,
                                                  const cellar::WorkValues& values);
/// The name of the first tick or ask that the step still needs; empty if it can be done.
[[nodiscard]] std::string missingOf(const Step& step, const cellar::WorkValues& values);

/// The names of all numbers that the step shows now, in its words, its timer and its facts, and
/// those in `alsoIn`, such as the words of its cautions. Each once.
[[nodiscard]] std::vector<std::string> numbersOf(const Step& step, const cellar::WorkValues& values,
                                                 const std::vector<std::string>& alsoIn);

/// The fact of the step, by its name, that forbids to begin it and to end it as done; empty if none
/// does.
[[nodiscard]] std::string refusalOf(const Step& step, const WorkFacts& facts);

/// Whether `name` is something that a step can record.
[[nodiscard]] bool knowsRecord(std::string_view name);
/// Whether the step is left for the tasting sheet, which records it itself.
[[nodiscard]] bool tastes(const Step& step);

/// Why a step is skipped, in the words that are recorded.
[[nodiscard]] std::span<const std::string_view> skipReasons();

/// How the worker ends a step.
struct Finish {
    std::string outcome = cellar::outcome::done;
    std::string reason = {};
    std::optional<SubjectId> person = {};
};
struct Finished {
    EntryId entry;
    std::string nextStep;  // empty: the work is over
};
/// End the step that is shown, with what it records: nothing of that if it is skipped.
///
/// Errors    Malformed if something is still to be filled in, naming it; Conflict if one of its
/// facts
///           forbids it, naming that; those of the acts that it records. Nothing is saved then.
[[nodiscard]] Result<Finished> finishStep(cellar::Cellar& cellar, const Sheet& sheet,
                                          const SubjectId& run, const Finish& finish);

}  // namespace spile::plan
