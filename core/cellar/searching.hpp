#pragma once

#include "core/base/job.hpp"
#include "core/cellar/queries.hpp"

/// Looking for barrels by what is written on them or known of them.
namespace spile::cellar {

enum class Which : std::uint8_t {
    All,
    Full,
    Empty,
    Held,     ///< on hold: Standing::Held
    Resting,  ///< full, not due and not on hold
};

struct BarrelSearch {
    std::string text;  // empty: every barrel
    Which which = Which::All;
    Instant now;  // what is due is judged by it
};

struct FoundBarrels {
    std::vector<BarrelRow> rows;
    AfterBarrel after;     // where the next page goes on
    bool complete = true;  // there is no next page
};

/// Return the next `limit` barrels after `after`, in the order of barrels(), whose mark, code (also
/// typed in lower case or with a hyphen), beer, spirit or place has `text` in it; letters are
/// compared folded. Walks the barrels page by page, for the reader thread.
///
/// Errors    Cancelled by `job`; those of every query.
[[nodiscard]] Result<FoundBarrels> searchBarrels(ledger::Database& database,
                                                 const BarrelSearch& search,
                                                 const AfterBarrel& after, int limit,
                                                 const Job& job = {});

}  // namespace spile::cellar
