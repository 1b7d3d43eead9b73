#include "core/wood/explanation.hpp"

#include "core/units/checks.hpp"
#include "core/wood/soakage.hpp"

#include <algorithm>
#include <limits>

namespace spile::wood {

namespace {

// Of a barrel called full: common practice, 1 to 2 gallons of 53 or none.
constexpr Spread shortShare{0.0, 1.0 / 53.0, 2.0 / 53.0};

Result<VolumeSpread> evaporationOf(const LossCase& seen)
{
    const auto at = [&](double permeance) {
        const Wood wood{seen.wood.inner, seen.wood.stave, permeance, seen.wood.ethanolShare.median};
        return evaporated(seen.start, wood, seen.climate, seen.time);
    };
    SPILE_ASSIGN(low, at(seen.wood.permeance.low));
    SPILE_ASSIGN(median, at(seen.wood.permeance.median));
    SPILE_ASSIGN(high, at(seen.wood.permeance.high));
    // In humid air more permeance means a greater gain, and near balance either end may be passed.
    return VolumeSpread{std::min({low, median, high}), median, std::max({low, median, high})};
}

}  // namespace

Result<Explanation> explainLoss(const LossCase& seen)
{
    SPILE_TRY(needFinite("lost_m3", seen.lost.si()));
    SPILE_TRY(needBetween("reading_error_m3", seen.readingError.si(), 0.0,
                          std::numeric_limits<double>::infinity()));
    SPILE_ASSIGN(filled, liquor::describe(seen.start));
    Explanation all;
    SPILE_ASSIGN(evaporation, evaporationOf(seen));
    SPILE_ASSIGN(inTheEnd, soakagePrior(seen.wood.inner, seen.empty, seen.rewetted));
    SPILE_ASSIGN(soaked, soakedBy(seen.time));
    all.evaporation = evaporation;
    all.soakage = soaked * inTheEnd;
    all.shortFill = {shortShare.low * filled.volume, shortShare.median * filled.volume,
                     shortShare.high * filled.volume};
    all.most = std::max(all.evaporation.high, Volume{}) + all.soakage.high;
    all.unexplained = std::max(seen.lost - all.most, Volume{});
    all.moreThanExplained = all.unexplained > seen.readingError;
    all.moreThanShortFill = all.unexplained > seen.readingError + all.shortFill.high;
    return all;
}

}  // namespace spile::wood
