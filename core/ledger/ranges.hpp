#pragma once

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
[[nodiscard]] Result<std::vector<OutgoingRange>> rangesBeyond(Database& database,
                                                              const CellarId& cellar,
                                                              const std::vector<Head>& known);

}  // namespace spile::ledger
