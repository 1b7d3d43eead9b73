#pragma once

#include "core/base/job.hpp"
#include "core/blend/blend.hpp"

#include <functional>

namespace spile::blend {

/// A bound that stands in the way of every blend.
struct InTheWay {
    enum class What : std::uint8_t { Attribute, Strength, Amount };
    What what{};
    std::size_t wish = 0;  // of an attribute
    double reached = 0;    // the nearest that was found
    double bound = 0;      // what it should have kept
};

struct Found {
    /// Different sets of barrels, each with its best shares; the least expected distance first.
    std::vector<Blend> blends;
    /// No blend can have a smaller expected distance than this.
    double bound = 0;
    /// The first of `blends` is the best there is, or there is none; else the search was stopped
    /// and the best lies between `bound` and the first one's distance.
    bool proven = false;
    /// If there is none: what stands in the way of the blend that comes nearest, by how much.
    std::vector<InTheWay> inTheWay;
};

/// How many blends are kept.
inline constexpr std::size_t blendsKept = 200;

/// Told each time that a better blend is found.
using OnBetter = std::function<void(const Blend&)>;

/// Find the blends that come nearest to the target within all bounds.
///
/// How       every set of barrels is looked at, with sums that grow as a barrel is added; of sets
///           with one part barrel the best amount is a formula. Before that some hundred searches
///           by exchange give good blends at once.
/// Errors    those of checkProblem(). Being stopped by `job` is none: what is found so far is
/// given,
///           with a bound over what was not looked at: that of free parts.
/// Accuracy  bounds are kept to 1e-9 of the amounts; distances are exact to about 1e-9.
/// Limits    5e7 sets of whole barrels take some tenths of a second; see tests/bench.
[[nodiscard]] Result<Found> bestBlends(const Problem& problem, const Job& job = {},
                                       const OnBetter& onBetter = {});

/// Return `blends` with the greatest chance first; equal ones in their order.
[[nodiscard]] std::vector<Blend> byChance(std::vector<Blend> blends);

}  // namespace spile::blend
