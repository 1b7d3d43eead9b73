#include "core/liquor/mixing.hpp"

#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/gravity.hpp"
#include "core/liquor/limits.hpp"
#include "core/units/checks.hpp"

namespace spile::liquor {

namespace {

constexpr double extractMost = 44;  // °P, as far as gravity.hpp goes

// What a kilogram of extract-laden liquor adds to the density of its alcohol, in kg/m3.
double densityOfExtract(double realExtract)
{
    return waterDensityAt20 * (specificGravityOfPlatoUnchecked(realExtract) - 1);
}

// The mass fraction of ethanol of which a liquor with this extract has the strength by volume.
Result<double> massFractionWithExtract(double alcoholByVolume, double realExtract)
{
    const double ofExtract = densityOfExtract(realExtract);
    const double ethanol = alcoholByVolume * ethanolDensityAt20;  // kg in 1 m3
    const double most = 1 - realExtract / 100;
    const double strongest = most * (densityAt20(most) + ofExtract);
    SPILE_TRY(needBetween("alcohol_by_volume", alcoholByVolume, 0, strongest / ethanolDensityAt20));
    const double start = alcoholByVolume * most;
    return rootBetween(0, most, start, [&](double a) {
        const ValueAndSlope here = densityCurveAt20.withSlope(a);
        return ValueAndSlope{a * (here.value + ofExtract) - ethanol,
                             here.value + ofExtract + a * here.slope};
    });
}

Result<void> needMasses(const Liquor& liquor)
{
    SPILE_TRY(needBetween("water_kg", liquor.water.si(), 0, amountMost));
    SPILE_TRY(needBetween("ethanol_kg", liquor.ethanol.si(), 0, amountMost));
    SPILE_TRY(needBetween("extract_kg", liquor.extract.si(), 0, amountMost));
    SPILE_TRY(needPositive("mass_kg", liquor.mass().si()));
    return needBetween("real_extract_p", 100 * (liquor.extract / liquor.mass()), 0, extractMost);
}

}  // namespace

Result<Liquor> liquorOf(Volume at20, double alcoholByVolume, double realExtract)
{
    SPILE_TRY(needBetween("volume_m3", at20.si(), 0, amountMost));
    SPILE_TRY(needBetween("real_extract_p", realExtract, 0, extractMost));
    SPILE_ASSIGN(byMass, massFractionWithExtract(alcoholByVolume, realExtract));
    const double density = densityAt20(byMass) + densityOfExtract(realExtract);
    const Mass whole = kilograms(density * at20.si());
    const double extract = realExtract / 100;
    return Liquor{(1 - byMass - extract) * whole, byMass * whole, extract * whole};
}

Mixed describeUnchecked(const Liquor& liquor) noexcept
{
    Mixed mixed;
    mixed.mass = liquor.mass();
    mixed.alcoholByMass = liquor.ethanol / mixed.mass;
    mixed.realExtract = 100 * (liquor.extract / mixed.mass);
    const double density = densityAt20(mixed.alcoholByMass) + densityOfExtract(mixed.realExtract);
    mixed.specificGravity = density / waterDensityAt20;
    mixed.volume = cubicMetres(mixed.mass.si() / density);
    mixed.alcoholByVolume = mixed.alcoholByMass * density / ethanolDensityAt20;
    return mixed;
}

Result<Mixed> describe(const Liquor& liquor)
{
    SPILE_TRY(needMasses(liquor));
    return describeUnchecked(liquor);
}

double ethanolMoleFraction(const Liquor& liquor) noexcept
{
    constexpr double molarMassRatio = 46.0684 / 18.01528;  // ethanol over water
    return liquor.ethanol.si() / (liquor.ethanol.si() + molarMassRatio * liquor.water.si());
}

Result<Mixed> mix(std::span<const Portion> portions)
{
    if (portions.empty()) {
        return fail(ErrorCode::OutOfRange, "portions", "0", "at least 1");
    }
    Liquor whole;
    Volume before;
    for (const Portion& portion : portions) {
        SPILE_ASSIGN(liquor, liquorOf(portion));
        whole = whole + liquor;
        before = before + portion.volume;
    }
    SPILE_ASSIGN(mixed, describe(whole));
    mixed.contraction = before - mixed.volume;
    return mixed;
}

Result<Volume> spiritToReach(const Portion& beer, double spiritByVolume, double targetByVolume)
{
    SPILE_TRY(needPositive("volume_m3", beer.volume.si()));
    SPILE_ASSIGN(base, liquorOf(beer));
    SPILE_ASSIGN(spirit, liquorOf(beer.volume, spiritByVolume, 0));
    SPILE_TRY(
        needBetween("target_by_volume", targetByVolume, beer.alcoholByVolume, spiritByVolume));
    if (targetByVolume >= spiritByVolume) {
        return failBetween("target_by_volume", targetByVolume, beer.alcoholByVolume,
                           spiritByVolume);
    }
    // Over the share of the spirit's volume, 0 to 1, the strength rises nearly in a straight line:
    // each new guess is where the chord of the bracket meets the target, with the older end's miss
    // halved when it stays (the Illinois rule).
    double low = 0;
    double high = 1;
    double missLow = beer.alcoholByVolume - targetByVolume;
    double missHigh = spiritByVolume - targetByVolume;
    double share = 0;
    int side = 0;
    for (int i = 0; i < 100 && high - low > 1e-16; ++i) {
        share = (low * missHigh - high * missLow) / (missHigh - missLow);
        const double miss =
            describeUnchecked((1 - share) * base + share * spirit).alcoholByVolume - targetByVolume;
        if (miss == 0 || share == low || share == high) {
            break;
        }
        if (miss > 0) {
            high = share;
            missHigh = miss;
            missLow *= side == 1 ? 0.5 : 1;
            side = 1;
        } else {
            low = share;
            missLow = miss;
            missHigh *= side == -1 ? 0.5 : 1;
            side = -1;
        }
    }
    return (share / (1 - share)) * beer.volume;
}

Result<double> spiritInWood(Volume beer, double beerByVolume, Volume inWood, double inWoodByVolume)
{
    SPILE_TRY(needBetween("beer_m3", beer.si(), 0, amountMost));
    SPILE_TRY(needBetween("in_wood_m3", inWood.si(), 0, amountMost));
    SPILE_TRY(needPositive("volume_m3", (beer + inWood).si()));
    SPILE_TRY(needBetween("beer_by_volume", beerByVolume, 0, 1));
    SPILE_TRY(needBetween("in_wood_by_volume", inWoodByVolume, 0, 1));
    const double share = inWood / (beer + inWood);
    return beerByVolume + share * (inWoodByVolume - beerByVolume);
}

}  // namespace spile::liquor
