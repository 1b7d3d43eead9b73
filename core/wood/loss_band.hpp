#pragma once

#include "core/wood/evaporation.hpp"

#include <span>

/// The course of a barrel with how sure it is.
namespace spile::wood {

/// What is known of a barrel's wood before the course.
struct WoodPrior {
    Area inner;
    Length stave = standardStave;
    Spread permeance = permeancePrior;
    Spread ethanolShare = ethanolSharePrior;
};

/// The end of a day; each with its 80 % interval.
struct BandDay {
    VolumeSpread volume;
    Spread alcoholByVolume;
    Spread specificGravity;
};

/// Write the band of courses that a barrel may take: evaporation, and what the wood drinks as beer.
///
/// How: seven courses run side by side: the middle one, and for permeance, ethanol share and
/// soakage one at either end of its spread. Each number's distances from the middle course, below
/// and above, are added as squares over the three causes. No random numbers; low <= median <= high
/// always.
///
/// Shape     out.size() == days.size(). Nothing is allocated. About seven times a lossCourse().
/// Range     as lossCourse(); 0 <= low <= median <= high in each spread; `soakage` 0 or more,
///           taken up by the time law of soakedBy().
/// Errors    as lossCourse(); OutOfRange for a spread out of order ("spread").
/// Accuracy  against quantiles of random draws of the three causes: within a tenth of the band's
///           width (tests/property/wood_band_test.cpp).
[[nodiscard]] Result<void> lossBand(const liquor::Liquor& start, const WoodPrior& wood,
                                    const VolumeSpread& soakage, std::span<const Climate> days,
                                    std::span<BandDay> out);

}  // namespace spile::wood
