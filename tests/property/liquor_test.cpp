#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/extract.hpp"
#include "core/liquor/gravity.hpp"
#include "core/liquor/mixing.hpp"
#include "core/liquor/refractometer.hpp"
#include "core/liquor/strength.hpp"
#include "core/liquor/water.hpp"
#include "core/liquor/weighing.hpp"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace spile::liquor {

namespace {

rc::Gen<double> between(double least, double most)
{
    constexpr int whole = 1'000'000'000;
    return rc::gen::map(rc::gen::inRange(0, whole + 1), [=](int n) {
        return least + (most - least) * (static_cast<double>(n) / whole);
    });
}

// Numbers that nobody would pick, and those that somebody would.
rc::Gen<double> anyDouble()
{
    using Limits = std::numeric_limits<double>;
    return rc::gen::oneOf(
        rc::gen::arbitrary<double>(), between(-2, 2), between(-50, 1100),
        rc::gen::element(Limits::quiet_NaN(), Limits::infinity(), -Limits::infinity(), -0.0, 0.0,
                         1.0, 1.2, 200.0, 273.15, 313.15, 293.15, 998.20123, Limits::max(),
                         Limits::lowest(), Limits::denorm_min(), 1 + Limits::epsilon()));
}

rc::Gen<Portion> anyPortion()
{
    return rc::gen::map(
        rc::gen::tuple(between(0.001, 1000), between(0, 0.7), between(0, 15)),
        [](const auto& drawn) {
            return Portion{litres(std::get<0>(drawn)), std::get<1>(drawn), std::get<2>(drawn)};
        });
}

template <class T>
bool isFiniteOrError(const Result<T>& result)
{
    if constexpr (std::is_same_v<T, double>) {
        return !result || std::isfinite(*result);
    } else {
        return !result || std::isfinite(result->si());
    }
}

bool isFiniteOrError(const Result<Mixed>& result)
{
    return !result ||
           (std::isfinite(result->volume.si()) && std::isfinite(result->alcoholByVolume) &&
            std::isfinite(result->specificGravity) && std::isfinite(result->realExtract) &&
            std::isfinite(result->mass.si()) && std::isfinite(result->contraction.si()));
}

bool isFiniteOrError(const Result<BeerStrength>& result)
{
    return !result ||
           (std::isfinite(result->originalExtract) && std::isfinite(result->realExtract) &&
            std::isfinite(result->alcoholByMass) && std::isfinite(result->alcoholByVolume));
}

double relativeMiss(Mass a, Mass b, Mass whole) { return std::abs((a - b) / whole); }

}  // namespace

RC_GTEST_PROP(R22, GoesFromDensityBackToStrength, ())
{
    const double byMass = *between(0, 1);
    const Temperature t = celsius(*between(0, 40));
    const auto back = massFractionByDensity(*densityByMass(byMass, t), t);
    RC_ASSERT(back.has_value());
    RC_ASSERT(std::abs(*back - byMass) < 1e-9);
}

RC_GTEST_PROP(R22, GoesFromVolumeToMassAndBack, ())
{
    const double byVolume = *between(0, 1);
    RC_ASSERT(std::abs(*volumeFractionByMass(*massFractionByVolume(byVolume)) - byVolume) < 1e-12);
    const double proof = *between(0, 200);
    RC_ASSERT(std::abs(*usProofByVolume(*alcoholByVolumeOfUsProof(proof)) - proof) < 1e-9);
}

RC_GTEST_PROP(R22, IsLighterTheStronger, ())
{
    const double a = *between(0, 1);
    const double b = *between(0, 1);
    const Temperature t = celsius(*between(0, 40));
    RC_PRE(a < b);
    RC_ASSERT(*densityByMass(a, t) > *densityByMass(b, t));
    RC_ASSERT(*massFractionByVolume(a) < *massFractionByVolume(b));
}

RC_GTEST_PROP(R22, IsNotMovedByATemperatureOf20, ())
{
    const double reading = *between(0, 1);
    RC_ASSERT(std::abs(*alcoholByVolumeByHydrometer(reading, celsius(20)) - reading) < 1e-9);
    const Volume volume = litres(*between(0, 1000));
    RC_ASSERT(std::abs(inLitres(*volumeAt20(volume, reading, celsius(20))) - inLitres(volume)) <
              1e-9);
}

RC_GTEST_PROP(Plato, IsOneRisingCurveWithAnInverse, ())
{
    const double a = *between(specificGravityLeast, specificGravityMost);
    const double b = *between(specificGravityLeast, specificGravityMost);
    RC_ASSERT(std::abs(*specificGravityOfPlato(*degreesPlato(a)) - a) < 1e-12);
    RC_PRE(a < b);
    // As steep as its flattest piece everywhere, so that it has neither a step nor a dent.
    const double slope = (*degreesPlato(b) - *degreesPlato(a)) / (b - a);
    RC_ASSERT((b - a < 1e-7 || (slope > 185 && slope < 275)));
}

RC_GTEST_PROP(Beer, IsTheSameFromItsGravitiesAndFromItsAlcohol, ())
{
    const double original = *between(1.03, 1.16);
    const double fermented = *between(0, 0.8);
    const double final = original - fermented * (original - 1);
    const auto beer = strengthByGravities(original, final);
    RC_ASSERT(beer.has_value());
    const auto back = strengthByAlcohol(final, beer->alcoholByVolume);
    RC_ASSERT(back.has_value());
    RC_ASSERT(std::abs(back->originalExtract - beer->originalExtract) < 1e-9);
    RC_ASSERT(std::abs(back->realExtract - beer->realExtract) < 1e-9);
    RC_ASSERT(std::abs(beerDensity(beer->alcoholByMass, beer->realExtract)->si() -
                       final * waterDensityAt20) < 1e-8);
}

RC_GTEST_PROP(Beer, IsStrongerTheMoreHasFermented, ())
{
    const double original = *between(1.03, 1.16);
    const double less = *between(0, 0.8);
    const double more = *between(0, 0.8);
    RC_PRE(less + 1e-9 < more);
    const auto at = [&](double fermented) {
        return *strengthByGravities(original, original - fermented * (original - 1));
    };
    RC_ASSERT(at(less).alcoholByVolume < at(more).alcoholByVolume);
    RC_ASSERT(at(less).realExtract > at(more).realExtract);
    RC_ASSERT(at(more).realExtract >= at(more).apparentExtract);
}

RC_GTEST_PROP(Liquors, AreDescribedAsTheyWereMade, ())
{
    const Portion portion = *anyPortion();
    const auto liquor = liquorOf(portion);
    RC_ASSERT(liquor.has_value());
    const auto mixed = describe(*liquor);
    RC_ASSERT(mixed.has_value());
    RC_ASSERT(std::abs(mixed->volume / portion.volume - 1) < 1e-12);
    RC_ASSERT(std::abs(mixed->alcoholByVolume - portion.alcoholByVolume) < 1e-12);
    RC_ASSERT(std::abs(mixed->realExtract - portion.realExtract) < 1e-11);
    const Mixed same = describeUnchecked(*liquor);
    RC_ASSERT(same.volume == mixed->volume);
    RC_ASSERT(same.alcoholByVolume == mixed->alcoholByVolume);
}

RC_GTEST_PROP(Mixtures, KeepTheMassOfEachPart, ())
{
    const auto portions =
        *rc::gen::nonEmpty(rc::gen::container<std::vector<Portion>>(anyPortion()));
    Liquor sum;
    for (const Portion& portion : portions) {
        sum = sum + *liquorOf(portion);
    }
    const auto mixed = mix(portions);
    RC_ASSERT(mixed.has_value());
    RC_ASSERT(relativeMiss(mixed->mass, sum.mass(), sum.mass()) < 1e-12);
    const Liquor again = *liquorOf(mixed->volume, mixed->alcoholByVolume, mixed->realExtract);
    RC_ASSERT(relativeMiss(again.ethanol, sum.ethanol, sum.mass()) < 1e-12);
    RC_ASSERT(relativeMiss(again.extract, sum.extract, sum.mass()) < 1e-12);
    RC_ASSERT(relativeMiss(again.water, sum.water, sum.mass()) < 1e-12);
}

RC_GTEST_PROP(Mixtures, LieBetweenTheirPortionsAndGrowWithThem, ())
{
    const Portion a = *anyPortion();
    const Portion b = *anyPortion();
    const std::array both = {a, b};
    const Mixed mixed = *mix(both);
    RC_ASSERT(mixed.realExtract >= std::min(a.realExtract, b.realExtract) - 1e-9);
    RC_ASSERT(mixed.realExtract <= std::max(a.realExtract, b.realExtract) + 1e-9);
    // By volume only nearly: contraction can lift a mixture of like strengths above both.
    const double lift = 0.04;
    RC_ASSERT(mixed.alcoholByVolume >= std::min(a.alcoholByVolume, b.alcoholByVolume) * (1 - lift));
    RC_ASSERT(mixed.alcoholByVolume <= std::max(a.alcoholByVolume, b.alcoholByVolume) * (1 + lift));
    RC_ASSERT(mixed.volume > std::max(a.volume, b.volume));
}

RC_GTEST_PROP(SpiritToReach, ReachesTheTarget, ())
{
    const Portion beer{litres(*between(0.1, 1000)), *between(0, 0.15), *between(0, 15)};
    const double spirit = *between(0.3, 0.95);
    const double part = *between(0, 0.98);
    const double target = beer.alcoholByVolume + part * (spirit - beer.alcoholByVolume);
    const auto volume = spiritToReach(beer, spirit, target);
    RC_ASSERT(volume.has_value());
    RC_ASSERT(*volume >= litres(0));
    const std::array both = {beer, Portion{*volume, spirit, 0}};
    RC_ASSERT(std::abs(mix(both)->alcoholByVolume - target) < 1e-12);
}

RC_GTEST_PROP(Hydrometer, CorrectsUpwardsWhatIsWarm, ())
{
    const double reading = *between(0.98, 1.16);
    // Below 6 °C water widens less than glass.
    const double cold = *between(6, 40);
    const double warm = *between(6, 40);
    RC_PRE(cold + 1e-6 < warm);
    RC_ASSERT(*correctedGravity(reading, celsius(cold), celsius(20)) <
              *correctedGravity(reading, celsius(warm), celsius(20)));
}

RC_GTEST_PROP(LiquorFunctions, AnswerEveryDoubleWithAFiniteNumberOrAnError, ())
{
    const double a = *anyDouble();
    const double b = *anyDouble();
    const double c = *anyDouble();
    const Temperature t = kelvins(b);
    const Volume volume = cubicMetres(a);
    RC_ASSERT(isFiniteOrError(waterDensity(t)));
    RC_ASSERT(isFiniteOrError(densityByMass(a, t)));
    RC_ASSERT(isFiniteOrError(massFractionByDensity(kilogramsPerCubicMetre(a), t)));
    RC_ASSERT(isFiniteOrError(massFractionByVolume(a)));
    RC_ASSERT(isFiniteOrError(volumeFractionByMass(a)));
    RC_ASSERT(isFiniteOrError(volumeAt20(volume, c, t)));
    RC_ASSERT(isFiniteOrError(usProofByVolume(a)));
    RC_ASSERT(isFiniteOrError(alcoholByVolumeOfUsProof(a)));
    RC_ASSERT(isFiniteOrError(alcoholByVolumeByHydrometer(a, t)));
    RC_ASSERT(isFiniteOrError(proofWithSolids(a, gramsPerLitre(b))));
    RC_ASSERT(isFiniteOrError(pureAlcohol(volume, b)));
    RC_ASSERT(isFiniteOrError(degreesPlato(a)));
    RC_ASSERT(isFiniteOrError(specificGravityOfPlato(a)));
    RC_ASSERT(isFiniteOrError(correctedGravity(a, t, kelvins(c))));
    RC_ASSERT(isFiniteOrError(strengthByGravities(a, b)));
    RC_ASSERT(isFiniteOrError(strengthByAlcohol(a, b)));
    RC_ASSERT(isFiniteOrError(hmrcAlcoholByVolume(a, b)));
    RC_ASSERT(isFiniteOrError(beerDensity(a, b)));
    RC_ASSERT(isFiniteOrError(wortPlatoByBrix(a, b)));
}

RC_GTEST_PROP(Mixing, AnswersEveryDoubleWithAFiniteNumberOrAnError, ())
{
    const double a = *anyDouble();
    const double b = *anyDouble();
    const double c = *anyDouble();
    const std::array portions = {Portion{cubicMetres(a), b, c}, Portion{litres(1), 0.1, 7}};
    RC_ASSERT(isFiniteOrError(mix(portions)));
    RC_ASSERT(isFiniteOrError(describe({kilograms(a), kilograms(b), kilograms(c)})));
    RC_ASSERT(isFiniteOrError(spiritToReach(portions[0], a, b)));
    RC_ASSERT(isFiniteOrError(spiritToReach(portions[1], a, b)));
    RC_ASSERT(isFiniteOrError(spiritInWood(cubicMetres(a), b, cubicMetres(c), b)));
    RC_ASSERT(isFiniteOrError(volumeByWeight(kilograms(a), b)));
    RC_ASSERT(isFiniteOrError(volumeByWeight60F(kilograms(a), b)));
    RC_ASSERT(isFiniteOrError(spiritByWeight(kilograms(a), b)));
    RC_ASSERT(isFiniteOrError(proofGallons(cubicMetres(a), b)));
}

}  // namespace spile::liquor
