#pragma once

#include "core/cellar/acts/act.hpp"
#include "core/units/units.hpp"

#include <string>
#include <vector>

/// Acts that take beer out to be tasted.
namespace spile::cellar {

struct NewDraw {
    SubjectId barrel;
    Volume volume;
    std::string method;  // "sample hole", "bunghole", "valve"
    std::optional<SubjectId> flight = {};
    std::optional<int> glass = {};
    Circumstance circumstance = {};
};
/// Errors    besides those of every act: OutOfRange if more is drawn than the barrel holds.
[[nodiscard]] Result<ledger::NewEntry> drawEntry(Cellar& cellar, const NewDraw& draw);
[[nodiscard]] Result<EntryId> recordDraw(Cellar& cellar, const NewDraw& draw);

/// Begin a flight: glasses numbered from 1, one for each of `barrels` in that order.
[[nodiscard]] Result<SubjectId> beginFlight(Cellar& cellar, const std::string& name,
                                            const std::vector<SubjectId>& barrels,
                                            const Circumstance& circumstance = {});

}  // namespace spile::cellar
