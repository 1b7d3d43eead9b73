#pragma once

#include "core/liquor/mixing.hpp"
#include "core/trace/graph.hpp"
#include "core/trace/trace.hpp"

/// How much of everything went where, by mass of water, alcohol and extract.
namespace spile::trace {

/// What was taken of one thing that had come into a lot.
struct Part {
    std::size_t in = 0;
    liquor::Liquor liquor;
};

/// All by the numbers of the graph's nodes.
struct Account {
    std::vector<liquor::Liquor> into;      // of what came into a lot
    std::vector<liquor::Liquor> left;      // of that, at the end
    std::vector<std::vector<Part>> parts;  // of what was taken of a lot
    std::vector<Oddity> oddities;          // their subjects are empty
    std::vector<SubjectId> oddLots;        // one for each oddity

    [[nodiscard]] liquor::Liquor taken(std::size_t node) const;
};

/// Follow all amounts, from what was measured into lots to what was taken of them. What a lot gave
/// to another comes in as what it was there; what came out of a barrel as it was measured.
///
/// Accuracy  what came into a lot is what was taken of it and what is left, within 1e-12.
/// Errors    those of liquor::liquorOf() for what was measured.
[[nodiscard]] Result<Account> accountOf(const Graph& graph);

/// A lot's balance.
struct LotBalance {
    liquor::Liquor in, packaged, lost, passedOn, discarded, left;
    std::optional<liquor::Mixed> now;  // what is left, as it would be measured; none if nothing
    bool strengthKnown = true;         // of all that came in
    Volume missing{};                  // by how much more was taken than had come in
};
[[nodiscard]] Result<LotBalance> balanceOf(ledger::Database& database, const SubjectId& lot);

}  // namespace spile::trace
