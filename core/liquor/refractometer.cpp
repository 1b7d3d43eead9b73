#include "core/liquor/refractometer.hpp"

#include "core/units/checks.hpp"

namespace spile::liquor {

Result<double> wortPlatoByBrix(double brix, double wortFactor)
{
    SPILE_TRY(needBetween("brix", brix, 0, 40));
    SPILE_TRY(needBetween("wort_factor", wortFactor, 0.9, 1.2));
    return brix / wortFactor;
}

Result<double> beerGravityByBrix(double brix, double /*originalExtract*/)
{
    return fail(ErrorCode::Unsupported, "refractometer", std::to_string(brix),
                "a hydrometer or density meter");
}

}  // namespace spile::liquor
