#pragma once

#include "core/wood/loss_band.hpp"

/// Where beer went that is no longer in the barrel.
namespace spile::wood {

/// A barrel that was filled and gauged later. Draws and top-ups are taken off `lost` before.
struct LossCase {
    liquor::Liquor start;  ///< as it was filled
    WoodPrior wood;
    Climate climate;  ///< the mean of the time
    Duration time;
    Duration empty;       ///< how long the barrel had stood empty
    Duration rewetted;    ///< how long it was wetted again; 0 if not
    Volume lost;          ///< full volume less the gauge
    Volume readingError;  ///< two deviations of `lost`
};

/// What each cause may have taken, with 80 % intervals, and what is left over.
struct Explanation {
    VolumeSpread evaporation;
    VolumeSpread soakage;
    VolumeSpread shortFill;          ///< of a barrel that was called full
    Volume most;                     ///< evaporation and soakage, both at their high end
    Volume unexplained;              ///< of the loss beyond `most`; 0 or more
    bool moreThanExplained = false;  ///< unexplained by more than reading error
    bool moreThanShortFill = false;  ///< the same with a short fill at its high end
};

/// Return how a loss may have come about.
///
/// Range     as evaporated(), soakagePrior() and lossBand(); `lost` finite, readingError 0 or more.
/// Errors    NotFinite; OutOfRange.
/// Limits    leaks, samples that nobody wrote down and dregs are what `unexplained` stands for.
/// Source    a short fill of 1 to 2 gallons in 53: common practice.
[[nodiscard]] Result<Explanation> explainLoss(const LossCase& seen);

}  // namespace spile::wood
