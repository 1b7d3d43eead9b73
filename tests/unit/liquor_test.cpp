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

namespace spile::liquor {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
const double noNumber = std::nan("");

// The subject of a refusal for being out of range; else what it was.
template <class T>
std::string outOfRange(const Result<T>& result)
{
    if (result) {
        return "accepted";
    }
    return result.error().code == ErrorCode::OutOfRange ? result.error().subject : "another error";
}

template <class T>
std::string notFinite(const Result<T>& result)
{
    if (result) {
        return "accepted";
    }
    return result.error().code == ErrorCode::NotFinite ? result.error().subject : "another error";
}

}  // namespace

TEST(WaterDensity, RefusesWhatIsOutsideTheFormula)
{
    EXPECT_TRUE(waterDensity(celsius(0)));
    EXPECT_TRUE(waterDensity(celsius(40)));
    EXPECT_EQ(outOfRange(waterDensity(celsius(-0.001))), "temperature_c");
    EXPECT_EQ(outOfRange(waterDensity(celsius(40.001))), "temperature_c");
    EXPECT_EQ(notFinite(waterDensity(kelvins(noNumber))), "temperature_c");
    EXPECT_EQ(waterDensity(celsius(50)).error().limit, "0 to 40");
}

TEST(EthanolWater, RefusesWhatIsNoStrengthTemperatureOrDensity)
{
    EXPECT_EQ(outOfRange(densityByMass(-1e-9, celsius(20))), "alcohol_by_mass");
    EXPECT_EQ(outOfRange(densityByMass(1 + 1e-9, celsius(20))), "alcohol_by_mass");
    EXPECT_EQ(outOfRange(densityByMass(0.5, celsius(40.1))), "temperature_c");
    EXPECT_EQ(outOfRange(densityByMass(0.5, celsius(-20.1))), "temperature_c");
    EXPECT_EQ(notFinite(densityByMass(noNumber, celsius(20))), "alcohol_by_mass");
    const auto byDensity = [](double density, double t) {
        return massFractionByDensity(kilogramsPerCubicMetre(density), celsius(t));
    };
    EXPECT_EQ(outOfRange(byDensity(998.3, 20)), "density_kg_m3");
    EXPECT_EQ(outOfRange(byDensity(789.2, 20)), "density_kg_m3");
    EXPECT_EQ(outOfRange(byDensity(950, -1)), "temperature_c");
    EXPECT_EQ(notFinite(byDensity(infinite, 20)), "density_kg_m3");
    EXPECT_EQ(outOfRange(massFractionByVolume(1.01)), "alcohol_by_volume");
    EXPECT_EQ(outOfRange(volumeFractionByMass(-0.01)), "alcohol_by_mass");
    EXPECT_EQ(outOfRange(volumeAt20(litres(-1), 0.1, celsius(20))), "volume_m3");
}

TEST(VolumeAt20, LeavesWhatIsAt20AndShrinksWhatIsWarm)
{
    EXPECT_DOUBLE_EQ(inLitres(*volumeAt20(litres(200), 0.1, celsius(20))), 200);
    EXPECT_LT(*volumeAt20(litres(200), 0.1, celsius(25)), litres(200));
    EXPECT_GT(*volumeAt20(litres(200), 0.1, celsius(10)), litres(200));
}

TEST(Gravity, EndsWhereItSaysAndNamesWhatItRefuses)
{
    EXPECT_NEAR(*degreesPlato(specificGravityLeast), -5.26, 0.005);
    EXPECT_NEAR(*degreesPlato(specificGravityMost), 44.08, 0.005);
    EXPECT_EQ(*degreesPlato(1), 0);
    EXPECT_EQ(*specificGravityOfPlato(0), 1);
    EXPECT_EQ(outOfRange(degreesPlato(0.9799)), "specific_gravity");
    EXPECT_EQ(outOfRange(degreesPlato(1.2001)), "specific_gravity");
    EXPECT_EQ(outOfRange(degreesPlato(12)), "specific_gravity");  // typed as °P
    EXPECT_EQ(outOfRange(specificGravityOfPlato(44.1)), "degrees_plato");
    EXPECT_EQ(notFinite(specificGravityOfPlato(noNumber)), "degrees_plato");
}

TEST(Gravity, HasNeitherAStepNorAKinkWhereItsPiecesMeet)
{
    constexpr double step = 1e-7;
    const auto slopeFrom = [](double s) {
        return (*degreesPlato(s + step) - *degreesPlato(s)) / step;
    };
    for (const double seam : {0.995, 1.005, 1.101, 1.110}) {
        EXPECT_NEAR(*degreesPlato(seam + 1e-9), *degreesPlato(seam - 1e-9), 1e-6) << seam;
        EXPECT_NEAR(slopeFrom(seam), slopeFrom(seam - step), 0.01) << seam;
    }
}

TEST(CorrectedGravity, LeavesAReadingAtItsReference)
{
    for (const Temperature reference : {celsius(20), fahrenheit(60), celsius(15)}) {
        EXPECT_DOUBLE_EQ(*correctedGravity(1.085, reference, reference), 1.085);
    }
    EXPECT_EQ(outOfRange(correctedGravity(0.5, celsius(20), celsius(20))), "hydrometer_reading");
    EXPECT_EQ(outOfRange(correctedGravity(1.05, celsius(41), celsius(20))), "sample_temperature_c");
    EXPECT_EQ(outOfRange(correctedGravity(1.05, celsius(20), celsius(4))),
              "reference_temperature_c");
}

TEST(CorrectedGravity, AsksForAnotherReadingFarFromItsReference)
{
    EXPECT_FALSE(isFarFromReference(celsius(15)));
    EXPECT_FALSE(isFarFromReference(celsius(25)));
    EXPECT_TRUE(isFarFromReference(celsius(14.9)));
    EXPECT_TRUE(isFarFromReference(celsius(25.1)));
    EXPECT_TRUE(isFarFromReference(kelvins(noNumber)));
}

TEST(StrengthByGravities, KnowsUnfermentedWortAndRefusesTheImpossible)
{
    const auto wort = strengthByGravities(1.1, 1.1);
    ASSERT_TRUE(wort);
    EXPECT_NEAR(wort->alcoholByVolume, 0, 1e-12);
    EXPECT_NEAR(wort->realExtract, wort->originalExtract, 1e-10);
    EXPECT_EQ(wort->uncertaintyAbv, 0.003);
    ASSERT_TRUE(strengthByGravities(1, 1));
    EXPECT_EQ(outOfRange(strengthByGravities(1.05, 1.051)), "final_gravity");
    EXPECT_EQ(outOfRange(strengthByGravities(1.05, 0.985)), "final_gravity");  // over-dry
    EXPECT_EQ(outOfRange(strengthByGravities(0.999, 0.999)), "original_gravity");
    EXPECT_EQ(outOfRange(strengthByGravities(1.171, 1.03)), "original_gravity");
    EXPECT_EQ(notFinite(strengthByGravities(1.05, noNumber)), "final_gravity");
}

TEST(StrengthByGravities, GivesAnUncertaintyThatGrowsWithTheStrength)
{
    EXPECT_EQ(strengthByGravities(1.12, 1.036)->uncertaintyAbv, 0.003);
    EXPECT_NEAR(strengthByGravities(1.17, 1.03)->uncertaintyAbv,
                0.02 * strengthByGravities(1.17, 1.03)->alcoholByVolume, 1e-15);
}

TEST(StrengthByAlcohol, RefusesALiquorLighterThanItsAlcohol)
{
    EXPECT_EQ(outOfRange(strengthByAlcohol(0.983, 0.05)), "real_extract_p");
    EXPECT_EQ(outOfRange(strengthByAlcohol(1.01, 0.26)), "alcohol_by_volume");
    EXPECT_EQ(outOfRange(strengthByAlcohol(0.97, 0.05)), "specific_gravity");
}

TEST(Attenuation, IsThePartThatFermented)
{
    const BeerStrength beer = *strengthByGravities(1.083, 1.020);
    // Computed by hand from the extracts of the reference points: OE 20.006, RE 7.875, AE 5.081.
    EXPECT_NEAR(*realAttenuation(beer), 0.6064, 5e-5);
    EXPECT_NEAR(*apparentAttenuation(beer), 0.7460, 5e-5);
    EXPECT_EQ(outOfRange(realAttenuation({})), "original_extract_p");
}

TEST(DutyTable, PutsADifferenceIntoTheRowOfItsNearestTenth)
{
    EXPECT_NEAR(*hmrcAlcoholByVolume(1.06949, 1), 0.06949 * 1.33, 1e-9);
    EXPECT_NEAR(*hmrcAlcoholByVolume(1.0, 0.99306), 0.00694 * 1.25, 1e-9);
    EXPECT_NEAR(*hmrcAlcoholByVolume(1.0, 0.99304), 0.00696 * 1.26, 1e-9);
    EXPECT_EQ(*hmrcAlcoholByVolume(1.05, 1.05), 0);
    EXPECT_EQ(outOfRange(hmrcAlcoholByVolume(1.05, 1.06)), "gravity_difference");
    EXPECT_EQ(outOfRange(hmrcAlcoholByVolume(1.12, 1.0190)), "gravity_difference");
    EXPECT_EQ(notFinite(hmrcAlcoholByVolume(1.05, noNumber)), "gravity_difference");
}

TEST(BeerDensity, RefusesMoreThanTheWhole)
{
    EXPECT_EQ(outOfRange(beerDensity(0.9, 11)), "real_extract_p");
    EXPECT_EQ(outOfRange(beerDensity(0.1, 44.1)), "real_extract_p");
    EXPECT_EQ(outOfRange(beerDensity(1.1, 0)), "alcohol_by_mass");
    EXPECT_DOUBLE_EQ(beerDensity(0, 0)->si(), waterDensityAt20);
    EXPECT_DOUBLE_EQ(beerDensity(1, 0)->si(), ethanolDensityAt20);
}

TEST(Refractometer, ReadsWortAndRefusesBeer)
{
    EXPECT_DOUBLE_EQ(*wortPlatoByBrix(20.8, 1.04), 20);
    EXPECT_EQ(outOfRange(wortPlatoByBrix(41, 1.04)), "brix");
    EXPECT_EQ(outOfRange(wortPlatoByBrix(20, 0)), "wort_factor");
    const auto beer = beerGravityByBrix(12, 20);
    ASSERT_FALSE(beer);
    EXPECT_EQ(beer.error().code, ErrorCode::Unsupported);
    EXPECT_EQ(beer.error().limit, "a hydrometer or density meter");
}

TEST(Strength, RefusesWhatIsNoProof)
{
    EXPECT_EQ(outOfRange(alcoholByVolumeOfUsProof(200.1)), "us_proof");
    EXPECT_EQ(outOfRange(usProofByVolume(1.1)), "alcohol_by_volume");
    EXPECT_EQ(outOfRange(proofGallons(usGallons(1), -1)), "us_proof");
    EXPECT_EQ(outOfRange(pureAlcohol(litres(-1), 0.5)), "volume_m3");
    EXPECT_DOUBLE_EQ(inLitres(*pureAlcohol(litres(200), 0.12)), 24);
}

TEST(Strength, RefusesAReadingThatItsTemperatureBelies)
{
    EXPECT_EQ(outOfRange(alcoholByVolumeByHydrometer(1, celsius(10))), "density_kg_m3");
    EXPECT_EQ(outOfRange(alcoholByVolumeByHydrometer(1, celsius(30))), "accepted");
    EXPECT_EQ(outOfRange(alcoholByVolumeByHydrometer(0.5, celsius(31))), "temperature_c");
}

TEST(ProofWithSolids, HandsRichLiquorsToTheStill)
{
    EXPECT_EQ(proofWithSolids(90, gramsPerLitre(70)).error().code, ErrorCode::Unsupported);
    EXPECT_EQ(outOfRange(proofWithSolids(101, gramsPerLitre(5))), "apparent_proof");
}

TEST(Weighing, RefusesWhatNoScaleShows)
{
    EXPECT_EQ(outOfRange(volumeByWeight(kilograms(-1), 1)), "net_kg");
    EXPECT_EQ(outOfRange(volumeByWeight(kilograms(1), 1.4)), "specific_gravity");
    EXPECT_EQ(outOfRange(volumeByWeight60F(kilograms(1), 0)), "specific_gravity_60f");
    EXPECT_EQ(outOfRange(spiritByWeight(kilograms(1), 201)), "us_proof");
}

TEST(Mixing, RefusesLiquorsThatCannotBe)
{
    EXPECT_EQ(outOfRange(liquorOf(litres(-1), 0.1, 7)), "volume_m3");
    EXPECT_EQ(outOfRange(liquorOf(litres(1), 0.1, 45)), "real_extract_p");
    EXPECT_EQ(outOfRange(liquorOf(litres(1), 0.95, 40)), "alcohol_by_volume");
    EXPECT_EQ(outOfRange(describe({})), "mass_kg");
    EXPECT_EQ(outOfRange(describe({kilograms(1), kilograms(-1), kilograms(0)})), "ethanol_kg");
    EXPECT_EQ(outOfRange(describe({kilograms(1), kilograms(0), kilograms(1)})), "real_extract_p");
    EXPECT_EQ(outOfRange(mix({})), "portions");
    EXPECT_EQ(notFinite(liquorOf(litres(1), noNumber, 7)), "alcohol_by_volume");
}

TEST(Mixing, KeepsOnePortionAsItIs)
{
    const std::array one = {Portion{litres(200), 0.1, 7}};
    const Mixed mixed = *mix(one);
    EXPECT_NEAR(inLitres(mixed.volume), 200, 1e-9);
    EXPECT_NEAR(mixed.alcoholByVolume, 0.1, 1e-12);
    EXPECT_NEAR(mixed.realExtract, 7, 1e-12);
    EXPECT_NEAR(inLitres(mixed.contraction), 0, 1e-9);
}

TEST(Mixing, CountsMolecules)
{
    // Computed outside this project from R 22 and the molar masses 46.0684 and 18.01528 g/mol.
    EXPECT_NEAR(ethanolMoleFraction(*liquorOf(litres(1), 0.10, 0)), 0.0330, 5e-5);
    EXPECT_NEAR(ethanolMoleFraction(*liquorOf(litres(1), 0.12, 0)), 0.0401, 5e-5);
    EXPECT_NEAR(ethanolMoleFraction(*liquorOf(litres(1), 0.10, 7)), 0.0345, 5e-5);
}

TEST(SpiritToReach, RefusesATargetThatIsNotBetween)
{
    const Portion beer{litres(200), 0.1, 7};
    EXPECT_EQ(outOfRange(spiritToReach(beer, 0.5, 0.09)), "target_by_volume");
    EXPECT_EQ(outOfRange(spiritToReach(beer, 0.5, 0.5)), "target_by_volume");
    EXPECT_EQ(outOfRange(spiritToReach(beer, 0.5, 0.6)), "target_by_volume");
    EXPECT_EQ(notFinite(spiritToReach(beer, 0.5, noNumber)), "target_by_volume");
    EXPECT_EQ(outOfRange(spiritToReach({litres(0), 0.1, 7}, 0.5, 0.2)), "volume_m3");
}

TEST(SpiritInWood, RefusesTwoEmptyPlaces)
{
    EXPECT_EQ(outOfRange(spiritInWood(litres(0), 0.1, litres(0), 0.6)), "volume_m3");
    EXPECT_EQ(outOfRange(spiritInWood(litres(1), 0.1, litres(-1), 0.6)), "in_wood_m3");
}

}  // namespace spile::liquor
