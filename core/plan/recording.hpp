#pragma once

#include "core/plan/working.hpp"

/// What the steps of work sheets record; for working.cpp alone.
namespace spile::plan {

/// What a step records is made from what is known, what was filled in, and who did it.
struct Recording {
    cellar::Cellar& cellar;
    const WorkFacts& facts;
    cellar::Circumstance by;

    [[nodiscard]] const SubjectId& barrel() const { return facts.barrel.barrel; }
    [[nodiscard]] const cellar::WorkValues& values() const { return facts.values; }
};

/// The entries of a step. Measures of the barrel are recorded at once, as corrections of it.
///
/// Errors    NotFound for something that no step can record; those of the acts.
[[nodiscard]] Result<std::vector<ledger::NewEntry>> entriesOf(const Step& step,
                                                              const Recording& recording);

}  // namespace spile::plan
