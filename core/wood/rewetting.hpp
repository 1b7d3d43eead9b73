#pragma once

#include "core/base/result.hpp"
#include "core/liquor/mixing.hpp"
#include "core/units/units.hpp"
#include "core/wood/spread.hpp"

#include <cstdint>

/// Wetting an empty barrel again with spirit of its own kind before beer comes in.
namespace spile::wood {

/// What an empty barrel needs, by how long it has stood empty.
enum class EmptyBarrel : std::uint8_t {
    FillAsItIs,    ///< up to 14 days, bunged: still wet inside
    Rewet,         ///< up to 90 days
    SwellFirst,    ///< up to a year: water until it holds, drained, then spirit
    ProveItHolds,  ///< longer: fill with water for two days; unfit if it still weeps
};

/// Return what a barrel needs.
///
/// Range     empty 0 to 100 years.
/// Errors    NotFinite; OutOfRange.
/// Source    memory of the trade's custom; look and smell decide.
[[nodiscard]] Result<EmptyBarrel> emptyBarrelNeeds(Duration empty);

/// How to re-wet.
struct Rewetting {
    VolumeSpread spirit;  ///< of the kind the barrel held, near its strength
    Duration shortest;
    Duration usual;
    Duration longest;
};

/// Return how much spirit re-wets a barrel and for how long, turned and stood on either head by
/// turns: 2 to 4 L for 53 gallons, scaled by the inner surface, 2 to 7 days. Nothing for a barrel
/// to be filled as it is. Measure volume and strength of what is drained.
///
/// Range     inner 0.01 to 100 m2; empty 0 to 100 years.
/// Errors    NotFinite; OutOfRange.
/// Source    common practice; no measurement.
[[nodiscard]] Result<Rewetting> rewetting(Area inner, Duration empty);

/// Return the spirit that stays in wood and barrel: what was poured in less what was drained, each
/// with the strength it was measured at. The wood gives water and ethanol back apart, so the
/// strength of what stays follows from the ethanol.
///
/// Range     drained <= poured in volume and in ethanol; strengths 0 to 1; poured above 0.
/// Errors    NotFinite; OutOfRange.
/// Accuracy  that of the two measures; water and ethanol by mass.
[[nodiscard]] Result<liquor::Liquor> leftByRewetting(const liquor::Portion& poured,
                                                     const liquor::Portion& drained);

/// Return beer into which spirit was left, fully mixed, with how much it gained.
struct WithSpirit {
    liquor::Mixed mixed;
    double strengthGained{};  ///< in alcohol by volume
    double gravityGained{};   ///< below 0: spirit lightens
    Volume volumeGained;
};

/// Range     as liquor::describe(), for both.
/// Errors    NotFinite; OutOfRange.
/// Limits    spirit in the wood comes back over weeks and, until then, lies in layers.
[[nodiscard]] Result<WithSpirit> withSpirit(const liquor::Liquor& beer,
                                            const liquor::Liquor& spirit);

}  // namespace spile::wood
