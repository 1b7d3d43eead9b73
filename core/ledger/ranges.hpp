#pragma once

#include "core/base/job.hpp"
#include "core/ledger/bundle_format.hpp"

namespace spile::ledger {

/// A range to send. Of a chain with branches, also the rows of table entry that make it up, in
/// order; elsewhere its numbers say which they are, however many.
struct OutgoingRange {
    ChainRange range;
    std::vector<std::int64_t> rows;
};

/// Return what of the chains in `database` a receiver with the heads `known` lacks: the owner's
/// chain first, then the others as they came here. A chain with branches, or one of which the
/// receiver has entries that are not here, is given whole.
///
/// Errors    Damaged if an entry is missing; those of Database.
[[nodiscard]] Result<std::vector<OutgoingRange>> rangesBeyond(Database& database,
                                                              const CellarId& cellar,
                                                              const std::vector<Head>& known);

/// What can be handed out of a store of which something is damaged.
struct SoundPart {
    std::vector<OutgoingRange> ranges;  ///< each with its rows
    /// The receipt: each chain up to where nothing is missing, so that others send what follows.
    std::vector<Head> have;
    std::uint64_t leftOut = 0;   ///< damaged, or of a tap of which another entry is damaged
    std::optional<Error> wrong;  ///< what was found first; none: no entry is damaged
};

/// Verify all entries, and return what rangesBeyond() would of those that are sound: ranges that
/// end before what is damaged and begin again behind it, never between entries of one tap.
///
/// Errors    Cancelled; those of Database.
[[nodiscard]] Result<SoundPart> soundRangesBeyond(Database& database, const CellarId& cellar,
                                                  const std::vector<Head>& known, const Job& job);

}  // namespace spile::ledger
