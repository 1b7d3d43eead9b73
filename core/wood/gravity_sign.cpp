#include "core/wood/gravity_sign.hpp"

#include "core/units/checks.hpp"

#include <algorithm>
#include <numbers>

namespace spile::wood {

Result<GravityVerdict> judgeGravity(const GravityCase& seen)
{
    SPILE_TRY(needBetween("gravity_change", seen.measuredChange, -0.2, 0.2));
    SPILE_TRY(needBetween("reading_deviation", seen.readingDeviation, 0.0, 0.1));
    SPILE_ASSIGN(before, liquor::describe(seen.before));
    SPILE_ASSIGN(after, liquor::describe(seen.after));
    double gravityWithSpirit = after.specificGravity;
    if (seen.spiritMost != liquor::Liquor{}) {
        SPILE_TRY(liquor::describe(seen.spiritMost));
        SPILE_ASSIGN(mixed, liquor::describe(seen.after + seen.spiritMost));
        gravityWithSpirit = mixed.specificGravity;
    }
    GravityVerdict verdict;
    verdict.byEvaporation = after.specificGravity - before.specificGravity;
    verdict.bySpirit = std::min(gravityWithSpirit - after.specificGravity, 0.0);
    verdict.readingError = 2.0 * std::numbers::sqrt2 * seen.readingDeviation;
    verdict.unexplainedFall =
        seen.measuredChange < 0 &&
        seen.measuredChange < verdict.byEvaporation + verdict.bySpirit - verdict.readingError;
    return verdict;
}

}  // namespace spile::wood
