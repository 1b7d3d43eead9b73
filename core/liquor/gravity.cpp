#include "core/liquor/gravity.hpp"

#include "core/liquor/root.hpp"
#include "core/liquor/water.hpp"
#include "core/units/checks.hpp"

#include <array>
#include <cmath>

namespace spile::liquor {

namespace {

struct Cubic {
    double c0, c1, c2, c3;

    [[nodiscard]] constexpr ValueAndSlope at(double s) const
    {
        return {c0 + s * (c1 + s * (c2 + s * c3)), c1 + s * (2 * c2 + s * 3 * c3)};
    }
};

// -616.868 + 1111.14 s - 630.272 s2 + 135.997 s3, written about 1, so that water comes out exactly.
constexpr Cubic asbcAbout1{-0.003, 258.587, -222.281, 135.997};
constexpr Cubic nbs{-669.5622, 1262.7794, -775.6821, 182.4601};
constexpr double blendFrom = 1.101;  // about 24 °P
constexpr double blendTo = 1.110;    // about 26 °P
constexpr double lift = 0.003;       // what the ASBC cubic lacks at 1
constexpr double liftWithin = 0.005;

ValueAndSlope liftAt(double s)
{
    const double d = (s - 1) / liftWithin;
    const double rest = 1 - d * d;
    return {lift * rest * rest, -4 * lift / liftWithin * d * rest};
}

ValueAndSlope blendAt(double s)
{
    const double x = (s - blendFrom) / (blendTo - blendFrom);
    const double share = x * x * (3 - 2 * x);
    const double shareSlope = 6 * x * (1 - x) / (blendTo - blendFrom);
    const ValueAndSlope low = asbcAbout1.at(s - 1);
    const ValueAndSlope high = nbs.at(s);
    return {low.value + share * (high.value - low.value),
            low.slope + share * (high.slope - low.slope) + shareSlope * (high.value - low.value)};
}

ValueAndSlope platoAt(double s)
{
    if (s >= blendTo) {
        return nbs.at(s);
    }
    if (s > blendFrom) {
        return blendAt(s);
    }
    ValueAndSlope plato = asbcAbout1.at(s - 1);
    if (std::fabs(s - 1) < liftWithin) {
        const ValueAndSlope lifted = liftAt(s);
        plato.value += lifted.value;
        plato.slope += lifted.slope;
    }
    return plato;
}

}  // namespace

Result<double> degreesPlato(double specificGravity)
{
    SPILE_TRY(needBetween("specific_gravity", specificGravity, specificGravityLeast,
                          specificGravityMost));
    return platoAt(specificGravity).value;
}

double specificGravityOfPlatoUnchecked(double degreesPlato) noexcept
{
    // A cubic through four places of the inverse, good to 2.1e-5 over the range; each of Newton's
    // steps squares what is missing.
    const double p = degreesPlato;
    double s = 0.99999847 + p * (3.865124303e-3 + p * (1.333711552e-5 + p * 4.346391459e-8));
    for (int i = 0; i < 2; ++i) {
        const ValueAndSlope here = platoAt(s);
        s -= (here.value - p) / here.slope;
    }
    return s;
}

Result<double> specificGravityOfPlato(double degreesPlato)
{
    SPILE_TRY(needBetween("degrees_plato", degreesPlato, platoAt(specificGravityLeast).value,
                          platoAt(specificGravityMost).value));
    return specificGravityOfPlatoUnchecked(degreesPlato);
}

Result<double> correctedGravity(double reading, Temperature sample, Temperature reference)
{
    constexpr double glass = 25e-6;  // cubic expansion per °C
    SPILE_TRY(needBetween("hydrometer_reading", reading, 0.7, 1.3));
    SPILE_TRY(needCelsiusBetween("sample_temperature_c", sample, 0, 40));
    SPILE_TRY(needCelsiusBetween("reference_temperature_c", reference, 15, 25));
    SPILE_ASSIGN(waterThere, waterDensity(sample));
    SPILE_ASSIGN(waterHere, waterDensity(reference));
    return reading * (waterHere / waterThere) * (1 - glass * (sample.si() - reference.si()));
}

bool isFarFromReference(Temperature sample)
{
    return !(sample >= celsius(15) && sample <= celsius(25));
}

}  // namespace spile::liquor
