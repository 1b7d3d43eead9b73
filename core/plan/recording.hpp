#pragma once

#include "core/plan/working.hpp"

/// What the steps of work sheets record; for working.cpp and the files recording*.cpp alone.
namespace spile::plan {

/// What a step records is made from what is known, what was filled in, and who did it.
struct Recording {
    cellar::Cellar& cellar;
    const WorkFacts& facts;
    cellar::Circumstance by;

    [[nodiscard]] const SubjectId& barrel() const { return facts.barrel.barrel; }
    /// Requires that the work is on a lot.
    [[nodiscard]] const SubjectId& lot() const { return facts.lot->row.lot; }
    [[nodiscard]] const cellar::WorkValues& values() const { return facts.values; }
};

/// An entry, or none where nothing is to be recorded.
using Made = Result<std::optional<ledger::NewEntry>>;
[[nodiscard]] inline Made made(Result<ledger::NewEntry> entry)
{
    if (!entry) {
        return passOn(entry);
    }
    return std::optional(std::move(*entry));
}
struct Recorder {
    std::string_view name;
    Made (*make)(const Recording&);
    bool onLot = false;  // the work has to be on a lot
};
[[nodiscard]] std::span<const Recorder> lotRecorders();

/// The entries of a step. Measures of the barrel are recorded at once, as corrections of it.
///
/// Errors    NotFound for something that no step can record; those of the acts.
[[nodiscard]] Result<std::vector<ledger::NewEntry>> entriesOf(const Step& step,
                                                              const Recording& recording);

}  // namespace spile::plan
