#pragma once

#include "core/base/result.hpp"
#include "core/liquor/mixing.hpp"
#include "core/units/units.hpp"

/// What a change of gravity says. Evaporation raises it and spirit given back by the wood lowers
/// it; a fall beyond that is fermentation.
namespace spile::wood {

/// One standard deviation of a hydrometer's reading. Source: memory.
inline constexpr double hydrometerDeviation = 0.0005;

/// A barrel between two readings of gravity.
struct GravityCase {
    liquor::Liquor before;  ///< at the first reading
    liquor::Liquor after;   ///< the same less what evaporates meanwhile, as lossCourse() foresees
    liquor::Liquor spiritMost;  ///< what the wood may give back meanwhile; all 0 if nothing
    double measuredChange{};    ///< second reading less the first; below 0 for a fall
    double readingDeviation = hydrometerDeviation;  ///< of one reading
};

struct GravityVerdict {
    double byEvaporation{};  ///< expected change, above 0 in most cellars
    double bySpirit{};       ///< most that spirit may have lowered it; 0 or below
    double readingError{};   ///< two deviations of the difference of both readings
    bool unexplainedFall = false;
};

/// Return what a change of gravity says: a fall is unexplained if it is below evaporation and
/// spirit together by more than reading error.
///
/// Range     as liquor::describe(); measuredChange -0.2 to 0.2; readingDeviation 0 to 0.1.
/// Errors    NotFinite; OutOfRange.
/// Limits    spirit lies in layers at first: on a first use or re-wetted barrel take the reading
///           after about 8 weeks for the first.
[[nodiscard]] Result<GravityVerdict> judgeGravity(const GravityCase& seen);

}  // namespace spile::wood
