#include "core/liquor/extract.hpp"

#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/gravity.hpp"
#include "core/liquor/root.hpp"
#include "core/units/checks.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::liquor {

namespace {

// Balling's balance: grams of extract that ferment to 1 g of alcohol, and the part of them that
// goes away as CO2 and yeast.
constexpr double extractPerAlcohol = 2.0665;
constexpr double lostPerAlcohol = 1.0665;

// All in g/100 g.
double alcoholOf(double originalExtract, double realExtract)
{
    return (originalExtract - realExtract) /
           (extractPerAlcohol - lostPerAlcohol / 100 * originalExtract);
}

double originalExtractOf(double alcohol, double realExtract)
{
    return 100 * (extractPerAlcohol * alcohol + realExtract) / (100 + lostPerAlcohol * alcohol);
}

double byVolume(double byMass, double specificGravity)
{
    return byMass * specificGravity * waterDensityAt20 / ethanolDensityAt20;
}

double uncertaintyOf(double alcoholByVolume) { return std::max(0.003, 0.02 * alcoholByVolume); }

struct Factor {
    double differenceMost;  // 1000 (OG - PG), to a tenth
    double factor;
};
constexpr std::array factors = {Factor{6.9, 0.125},  Factor{10.4, 0.126}, Factor{17.2, 0.127},
                                Factor{26.1, 0.128}, Factor{36.0, 0.129}, Factor{46.5, 0.130},
                                Factor{57.1, 0.131}, Factor{67.9, 0.132}, Factor{78.8, 0.133},
                                Factor{89.7, 0.134}, Factor{100.7, 0.135}};

Result<double> attenuation(const BeerStrength& beer, double left)
{
    SPILE_TRY(needPositive("original_extract_p", beer.originalExtract));
    SPILE_TRY(needFinite("extract_p", left));
    return (beer.originalExtract - left) / beer.originalExtract;
}

}  // namespace

Result<BeerStrength> strengthByGravities(double originalGravity, double finalGravity)
{
    SPILE_TRY(needBetween("original_gravity", originalGravity, 1, 1.170));
    SPILE_TRY(needBetween("final_gravity", finalGravity, specificGravityLeast, originalGravity));
    SPILE_ASSIGN(original, degreesPlato(originalGravity));
    SPILE_ASSIGN(apparent, degreesPlato(finalGravity));
    const auto gravityAt = [&](double realExtract) {
        return densityAt20(alcoholOf(original, realExtract) / 100) / waterDensityAt20 +
               specificGravityOfPlatoUnchecked(realExtract) - 1;
    };
    const double driest = gravityAt(0);
    if (finalGravity < driest) {
        return failBetween("final_gravity", finalGravity, driest, originalGravity);
    }
    const double alcoholPerExtract = alcoholOf(original, 0) / std::max(original, 1e-9);
    const double start = std::clamp(0.1808 * original + 0.8192 * apparent, 0.0, original);
    const double real = rootBetween(0, original, start, [&](double realExtract) {
        const ValueAndSlope curve =
            densityCurveAt20.withSlope(alcoholOf(original, realExtract) / 100);
        // The extract's slope is near 0.004 per °P all over; Newton needs no better.
        const double slope = 0.004 - curve.slope / waterDensityAt20 * alcoholPerExtract / 100;
        return ValueAndSlope{gravityAt(realExtract) - finalGravity, slope};
    });
    const double alcohol = alcoholOf(original, real) / 100;
    const double volume = byVolume(alcohol, finalGravity);
    return BeerStrength{original, real, apparent, alcohol, volume, uncertaintyOf(volume)};
}

Result<BeerStrength> strengthByAlcohol(double specificGravity, double alcoholByVolume)
{
    SPILE_TRY(needBetween("alcohol_by_volume", alcoholByVolume, 0, 0.25));
    SPILE_ASSIGN(apparent, degreesPlato(specificGravity));
    const double alcohol =
        alcoholByVolume * ethanolDensityAt20 / (specificGravity * waterDensityAt20);
    const double ofExtract = specificGravity + 1 - densityAt20(alcohol) / waterDensityAt20;
    SPILE_ASSIGN(real, degreesPlato(ofExtract));
    // Rounding alone may put a liquor without extract below 0.
    constexpr double rounding = 1e-9;
    if (real < -rounding) {
        return failBetween("real_extract_p", real, 0, 44);
    }
    const double original = originalExtractOf(100 * alcohol, real);
    return BeerStrength{
        original, real, apparent, alcohol, alcoholByVolume, uncertaintyOf(alcoholByVolume)};
}

Result<double> hmrcAlcoholByVolume(double originalGravity, double presentGravity)
{
    SPILE_TRY(needBetween("original_gravity", originalGravity, 1, specificGravityMost));
    const double difference = 1000 * (originalGravity - presentGravity);
    SPILE_TRY(needFinite("gravity_difference", difference));
    // The table's rows go by tenths: the difference is put into the row of its nearest tenth.
    const double tenth = std::round(difference * 10) / 10;
    SPILE_TRY(needBetween("gravity_difference", tenth, 0, factors.back().differenceMost));
    const auto* row = std::find_if(factors.begin(), factors.end(), [&](const Factor& factor) {
        return tenth <= factor.differenceMost;
    });
    return difference * row->factor / 100;
}

Result<double> realAttenuation(const BeerStrength& beer)
{
    return attenuation(beer, beer.realExtract);
}

Result<double> apparentAttenuation(const BeerStrength& beer)
{
    return attenuation(beer, beer.apparentExtract);
}

Result<Density> beerDensity(double alcoholByMass, double realExtract)
{
    SPILE_TRY(needBetween("alcohol_by_mass", alcoholByMass, 0, 1));
    SPILE_TRY(
        needBetween("real_extract_p", realExtract, 0, std::min(44.0, 100 * (1 - alcoholByMass))));
    return kilogramsPerCubicMetre(densityAt20(alcoholByMass) +
                                  waterDensityAt20 *
                                      (specificGravityOfPlatoUnchecked(realExtract) - 1));
}

}  // namespace spile::liquor
