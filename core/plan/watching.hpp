#pragma once

#include "core/plan/numbers.hpp"
#include "core/wood/loss_band.hpp"
#include "core/wood/loss_rate.hpp"

/// Watching a full barrel: what it should hold now, and what its gauges say of it.
namespace spile::plan {

struct Watch {
    wood::VolumeSpread volume;  // what it should hold now, with its 80 % interval
    wood::Spread alcoholByVolume;
    wood::Spread specificGravity;
    Instant since;                          // the gauge or the fill that this begins at
    Volume reading;                         // one standard deviation of what was found then
    wood::LossRate rate;                    // what this barrel's own gauges have taught
    std::optional<wood::LossVerdict> last;  // of the last gauge, beside what was foreseen before it
};

/// Return what the barrel should hold at `facts.now`: from its last gauge, or its fill, on by the
/// climate of its place, with what the dry wood drinks, draws and top-ups.
///
/// What is not known is taken as usual: beer of 10 % vol and 1.015, air of 15 °C and 70 %.
///
/// Errors    NotFound, subject "fill", "volume_ml" or "size_ml", if it is empty or that was never
///           recorded; those of wood::lossBand().
[[nodiscard]] Result<Watch> watchOf(const WorkFacts& facts);

/// What evaporates between two times from the beer that the barrel holds.
struct Lost {
    liquor::Liquor before, after;
};
/// Return it for beer of this gravity at `from`, by the climate of its place and the usual rate.
///
/// Errors    as watchOf().
[[nodiscard]] Result<Lost> lossBetween(const WorkFacts& facts, Instant from, Instant to,
                                       double specificGravity);

}  // namespace spile::plan
