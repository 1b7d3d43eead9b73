#include "core/wood/soakage.hpp"

#include "core/units/checks.hpp"

#include <array>
#include <cmath>
#include <limits>

namespace spile::wood {

namespace {

struct Knot {
    double days;
    double low;  // litres per 53 gallon barrel
    double high;
};

// From memory of the trade's figures; the days at which they stand are ours.
constexpr std::array knots{Knot{0, 0, 2}, Knot{21, 3, 6}, Knot{120, 6, 11}};
constexpr double timeConstantDays = 10;

VolumeSpread spreadOf(double low, double high)
{
    return {litres(low), litres((low + high) / 2), litres(high)};
}

VolumeSpread perReference(double daysEmpty)
{
    for (std::size_t i = 1; i < knots.size(); ++i) {
        const Knot& from = knots[i - 1];
        const Knot& to = knots[i];
        if (daysEmpty < to.days) {
            const double share = (daysEmpty - from.days) / (to.days - from.days);
            return spreadOf(from.low + share * (to.low - from.low),
                            from.high + share * (to.high - from.high));
        }
    }
    return spreadOf(knots.back().low, knots.back().high);
}

Result<void> needInner(Area inner) { return needBetween("inner_m2", inner.si(), 0.01, 100.0); }

Result<void> needTime(std::string_view name, Duration time)
{
    constexpr double longest = 100.0 * factor::year / factor::day;
    return needBetween(name, inDays(time), 0.0, longest);
}

double soakedShare(Duration time) { return -std::expm1(-inDays(time) / timeConstantDays); }

}  // namespace

Result<Volume> soakage(Area inner, Length depth, double porosity)
{
    SPILE_TRY(needInner(inner));
    SPILE_TRY(needBetween("depth_m", depth.si(), 0.0, 0.1));
    SPILE_TRY(needBetween("porosity", porosity, 0.0, 1.0));
    return cubicMetres(inner.si() * depth.si() * porosity);
}

Result<VolumeSpread> soakagePrior(Area inner, Duration empty, Duration rewetted)
{
    SPILE_TRY(needInner(inner));
    SPILE_TRY(needTime("empty_d", empty));
    SPILE_TRY(needTime("rewetted_d", rewetted));
    const VolumeSpread dry = perReference(inDays(empty));
    const VolumeSpread wet = perReference(0.0);
    const double drunk = soakedShare(rewetted);
    const auto between = [&](Volume d, Volume w) { return (1.0 - drunk) * d + drunk * w; };
    return (inner / soakageReference) * VolumeSpread{between(dry.low, wet.low),
                                                     between(dry.median, wet.median),
                                                     between(dry.high, wet.high)};
}

Result<double> soakedBy(Duration time)
{
    SPILE_TRY(needBetween("time_s", time.si(), 0.0, std::numeric_limits<double>::infinity()));
    return soakedShare(time);
}

}  // namespace spile::wood
