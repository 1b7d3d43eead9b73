#pragma once

#include "core/trace/trace.hpp"

#include <string>
#include <vector>

/// What a person who types a name or a code may mean to trace.
namespace spile::trace {

struct Named {
    std::string name;  // of the lot, barrel, beer or substance; of packages their code
    std::optional<EntryId> package;  // its packages alone, on the way up
    Start start;                     // on the way down; of packages their lot
};
/// Return what is called `text`, letters compared folded: packages by their lot code, lots by name
/// or id, barrels by mark or code, beers by name, what was put in; in this order. Reads all lots,
/// barrels and batches by pages, for the threads behind the screens.
///
/// Errors    those of ledger::Database.
[[nodiscard]] Result<std::vector<Named>> findNamed(ledger::Database& database,
                                                   const std::string& text);
/// Of these only lots.
[[nodiscard]] Result<std::vector<cellar::LotRow>> findLots(ledger::Database& database,
                                                           const std::string& text);

}  // namespace spile::trace
