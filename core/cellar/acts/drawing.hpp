#pragma once

#include "core/cellar/acts/act.hpp"
#include "core/units/units.hpp"

#include <string>

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
/// Errors    besides those of every act: OutOfRange if more is drawn than the barrel holds;
/// NotFound
///           for a glass that the flight does not have from that barrel, Conflict if it is drawn.
[[nodiscard]] Result<ledger::NewEntry> drawEntry(Cellar& cellar, const NewDraw& draw);
[[nodiscard]] Result<EntryId> recordDraw(Cellar& cellar, const NewDraw& draw);

}  // namespace spile::cellar
