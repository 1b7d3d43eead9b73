#include "core/wood/rewetting.hpp"

#include "core/units/checks.hpp"
#include "core/wood/soakage.hpp"

#include <limits>

namespace spile::wood {

Result<EmptyBarrel> emptyBarrelNeeds(Duration empty)
{
    constexpr double longest = 100.0 * factor::year / factor::day;
    SPILE_TRY(needBetween("empty_d", inDays(empty), 0.0, longest));
    if (empty <= days(14)) {
        return EmptyBarrel::FillAsItIs;
    }
    if (empty <= days(90)) {
        return EmptyBarrel::Rewet;
    }
    return empty <= days(365) ? EmptyBarrel::SwellFirst : EmptyBarrel::ProveItHolds;
}

Result<Rewetting> rewetting(Area inner, Duration empty)
{
    SPILE_TRY(needBetween("inner_m2", inner.si(), 0.01, 100.0));
    SPILE_ASSIGN(needs, emptyBarrelNeeds(empty));
    if (needs == EmptyBarrel::FillAsItIs) {
        return Rewetting{};
    }
    const VolumeSpread perReference{litres(2), litres(3), litres(4)};
    return Rewetting{(inner / soakageReference) * perReference, days(2), days(3), days(7)};
}

Result<liquor::Liquor> leftByRewetting(const liquor::Portion& poured,
                                       const liquor::Portion& drained)
{
    SPILE_TRY(needPositive("poured_m3", poured.volume.si()));
    SPILE_ASSIGN(in, liquor::liquorOf(poured));
    SPILE_ASSIGN(out, liquor::liquorOf(drained));
    const double infinite = std::numeric_limits<double>::infinity();
    SPILE_TRY(needBetween("drained_water_kg", out.water.si(), 0.0, in.water.si()));
    SPILE_TRY(needBetween("drained_ethanol_kg", out.ethanol.si(), 0.0, in.ethanol.si()));
    SPILE_TRY(needBetween("drained_extract_kg", out.extract.si(), 0.0, infinite));
    // What sugar the drained spirit shows is of the barrel.
    return liquor::Liquor{in.water - out.water, in.ethanol - out.ethanol, Mass{}};
}

Result<WithSpirit> withSpirit(const liquor::Liquor& beer, const liquor::Liquor& spirit)
{
    SPILE_ASSIGN(before, liquor::describe(beer));
    SPILE_TRY(liquor::describe(spirit));
    SPILE_ASSIGN(after, liquor::describe(beer + spirit));
    return WithSpirit{after, after.alcoholByVolume - before.alcoholByVolume,
                      after.specificGravity - before.specificGravity, after.volume - before.volume};
}

}  // namespace spile::wood
