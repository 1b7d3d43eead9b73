// Sources: each point of liquor.csv names its own. Tolerances: half a unit of the last digit
// printed or the disagreement between sources that the point states.
#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/extract.hpp"
#include "core/liquor/gravity.hpp"
#include "core/liquor/mixing.hpp"
#include "core/liquor/strength.hpp"
#include "core/liquor/water.hpp"
#include "core/liquor/weighing.hpp"
#include "tests/support/check_points.hpp"

#include <gtest/gtest.h>
#include <vector>

namespace spile::liquor {

namespace {

using support::checkPoints;
using support::Formula;
using support::Point;
using support::valueOf;

double in(const Point& point, const std::string& name) { return point.input.at(name); }

Temperature temperatureOf(const Point& point) { return celsius(in(point, "temp_c")); }

template <class T>
double siOf(const Result<T>& result)
{
    return valueOf(result.map([](T quantity) { return quantity.si(); }));
}

double litresOf(const Result<Volume>& volume) { return valueOf(volume.map(inLitres)); }

std::map<std::string, Formula> densities()
{
    return {
        {"density_by_mass_kg_m3",
         [](const Point& p) { return siOf(densityByMass(in(p, "by_mass"), temperatureOf(p))); }},
        {"density_kg_m3",
         [](const Point& p) {
             return siOf(
                 massFractionByVolume(in(p, "abv_percent") / 100).and_then([&](double byMass) {
                     return densityByMass(byMass, temperatureOf(p));
                 }));
         }},
        {"water_density_kg_m3",
         [](const Point& p) { return siOf(waterDensity(temperatureOf(p))); }},
        {"litres_at_20", [](const Point& p) {
             return litresOf(volumeAt20(litres(in(p, "l")), in(p, "abv") / 100, temperatureOf(p)));
         }}};
}

std::map<std::string, Formula> strengths()
{
    return {
        {"mass_percent_of_us_proof",
         [](const Point& p) { return 100 * valueOf(massFractionOfUsProof(in(p, "us_proof"))); }},
        {"abv_percent_of_us_proof",
         [](const Point& p) { return 100 * valueOf(alcoholByVolumeOfUsProof(in(p, "us_proof"))); }},
        {"proof_gallons",
         [](const Point& p) {
             return valueOf(proofGallons(usGallons(in(p, "gallons")), in(p, "us_proof")));
         }},
        {"proof_with_solids",
         [](const Point& p) {
             return valueOf(
                 proofWithSolids(in(p, "us_proof"), gramsPerLitre(in(p, "solids_mg_100ml") / 100)));
         }},
        {"abv_percent_by_hydrometer", [](const Point& p) {
             return 100 * valueOf(alcoholByVolumeByHydrometer(in(p, "reading_percent") / 100,
                                                              temperatureOf(p)));
         }}};
}

std::map<std::string, Formula> weights()
{
    return {{"gallons_per_pound",
             [](const Point& p) {
                 return valueOf(spiritByWeight(pounds(1), in(p, "us_proof")).map(inUsGallons));
             }},
            {"proof_gallons_of_pounds",
             [](const Point& p) {
                 const double proof = in(p, "us_proof");
                 return valueOf(
                     spiritByWeight(pounds(in(p, "pounds")), proof).and_then([&](Volume volume) {
                         return proofGallons(volume, proof);
                     }));
             }},
            {"gallons_per_pound_with_solids",
             [](const Point& p) {
                 return valueOf(volumeByWeight60F(pounds(1), in(p, "sg_60f")).map(inUsGallons));
             }},
            {"litres_by_weight", [](const Point& p) {
                 return litresOf(volumeByWeight(kilograms(in(p, "net_kg")), in(p, "sg")));
             }}};
}

BeerStrength beerOf(const Point& point)
{
    return strengthByGravities(in(point, "og"), in(point, "fg")).value();
}

// The alcohol in g/100 g over what the extract seems to have lost.
double alcoholFactor(const Point& point)
{
    const double original = in(point, "original_p");
    const double apparent = original * in(point, "apparent_part");
    const auto beer =
        strengthByGravities(*specificGravityOfPlato(original), *specificGravityOfPlato(apparent));
    return 100 * beer.value().alcoholByMass / (original - apparent);
}

double originalExtract(const Point& point)
{
    const double gravity = *specificGravityOfPlato(in(point, "apparent_p"));
    const double byVolume =
        in(point, "mass_percent") / 100 * gravity * waterDensityAt20 / ethanolDensityAt20;
    return strengthByAlcohol(gravity, byVolume).value().originalExtract;
}

// The factor of the duty table, from below where a difference stands at the end of its row.
double dutyFactor(const Point& point)
{
    const double difference = in(point, "difference");
    return valueOf(hmrcAlcoholByVolume(1.12, 1.12 - difference / 1000)) * 100 / difference;
}

std::map<std::string, Formula> extracts()
{
    return {{"hydrometer_sg",
             [](const Point& p) {
                 return valueOf(
                     correctedGravity(in(p, "reading"), temperatureOf(p), celsius(in(p, "ref_c"))));
             }},
            {"degrees_plato", [](const Point& p) { return valueOf(degreesPlato(in(p, "sg"))); }},
            {"sg_of_plato",
             [](const Point& p) { return valueOf(specificGravityOfPlato(in(p, "plato"))); }},
            {"beer_density_kg_m3",
             [](const Point& p) {
                 return siOf(beerDensity(in(p, "by_mass"), in(p, "real_extract_p")));
             }},
            {"alcohol_factor", alcoholFactor},
            {"hmrc_factor", dutyFactor},
            {"hmrc_abv_percent",
             [](const Point& p) {
                 return 100 * valueOf(hmrcAlcoholByVolume(in(p, "og"), in(p, "fg")));
             }},
            {"beer_abv_percent", [](const Point& p) { return 100 * beerOf(p).alcoholByVolume; }},
            {"beer_mass_percent", [](const Point& p) { return 100 * beerOf(p).alcoholByMass; }},
            {"beer_real_extract_p", [](const Point& p) { return beerOf(p).realExtract; }},
            {"original_extract_p", originalExtract}};
}

double mixedMeasure(const Point& point)
{
    std::vector<Portion> portions;
    for (int i = 1; point.input.contains("l" + std::to_string(i)); ++i) {
        const std::string n = std::to_string(i);
        portions.push_back(
            {litres(in(point, "l" + n)), in(point, "abv" + n) / 100, in(point, "re" + n)});
    }
    const Mixed mixed = mix(portions).value();
    const Volume before = mixed.volume + mixed.contraction;
    const std::map<std::string, double> measures = {
        {"volume_l", inLitres(mixed.volume)},
        {"abv_percent", 100 * mixed.alcoholByVolume},
        {"real_extract_p", mixed.realExtract},
        {"sg", mixed.specificGravity},
        {"mass_kg", inKilograms(mixed.mass)},
        {"us_proof", usProofByVolume(mixed.alcoholByVolume).value()},
        {"contraction_percent", 100 * (mixed.contraction / before)}};
    return measures.at(point.word.at("measure"));
}

std::map<std::string, Formula> mixtures()
{
    return {
        {"mix", mixedMeasure},
        {"spirit_to_reach_l",
         [](const Point& p) {
             const Portion beer{litres(in(p, "beer_l")), in(p, "beer_abv") / 100, in(p, "beer_re")};
             return litresOf(
                 spiritToReach(beer, in(p, "spirit_abv") / 100, in(p, "target_abv") / 100));
         }},
        {"spirit_in_wood_abv_percent", [](const Point& p) {
             return 100 * valueOf(spiritInWood(litres(in(p, "beer_l")), in(p, "beer_abv") / 100,
                                               litres(in(p, "wood_l")), in(p, "wood_abv") / 100));
         }}};
}

}  // namespace

TEST(Liquor, MatchesPublishedPoints)
{
    std::map<std::string, Formula> all = densities();
    for (auto&& some : {strengths(), weights(), extracts(), mixtures()}) {
        all.insert(some.begin(), some.end());
    }
    checkPoints("liquor.csv", all);
}

}  // namespace spile::liquor
