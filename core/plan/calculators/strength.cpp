// strength, gravity, alcohol: how strong it is, by whatever was measured.
#include "core/liquor/strength.hpp"

#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/extract.hpp"
#include "core/liquor/gravity.hpp"
#include "core/liquor/weighing.hpp"
#include "core/plan/calculators/parts.hpp"

namespace spile::plan {

namespace {

constexpr std::string_view page = "numbers-strength.md";
constexpr std::string_view gravityPage = "numbers-gravity.md";
constexpr Temperature sixtyF = fahrenheit(60);

// --- strength

constexpr std::array strengthInputs = {
    optional(strengthInput("abv", "Alcohol by volume at 20 °C", none)),
    optional(plainInput("abw", "Alcohol by mass", Measurand::AlcoholByMass, none, 0, 1, "%", 0.1)),
    optional(plainInput("proof", "US proof", Measurand::UsProof, none, 0, 200, "proof", 1)),
    optional(plainInput("density", "Density of the spirit", Measurand::Density, none, 700, 1010,
                        "kg/m3", 0.1)),
    optional(strengthInput("hydrometer", "Reading of an alcoholometer made for 20 °C", none)),
    temperatureInput("temperature", "Temperature at which it was measured", 20, 0, 40),
    optional(volumeInput("volume", "Volume at 20 °C", none, 0, 1e6))};

constexpr std::array strengthAnswers = {
    strengthAnswer("abv", "Alcohol by volume at 20 °C"),
    AnswerSpec{"abw", "Alcohol by mass", Measurand::AlcoholByMass, "%", "%", 4},
    AnswerSpec{"proof", "US proof", Measurand::UsProof, "proof", "proof", 4},
    AnswerSpec{"density", "Density at 20 °C", Measurand::Density, "kg/m3", "kg/m3", 6},
    AnswerSpec{"volume-per-pound", "Volume of a pound weighed in air, at 60 °F", Measurand::Volume,
               "mL", "gal", 5},
    volumeAnswer("pure-alcohol", "Pure alcohol at 20 °C"),
    volumeAnswer("proof-gallons", "US gallons of 100 proof at 60 °F")};

constexpr std::array strengthSources = {
    densitySource, FormulaSource{"proof and proof gallon", "27 CFR 19.1"},
    FormulaSource{"volume by weight", "27 CFR 30.43"},
    FormulaSource{"widening of the alcoholometer's glass", "ISO 1768:1975"}};

// The mass fraction, which no temperature changes, from whichever measure was given.
Result<double> massFractionOf(const Given& given)
{
    if (const auto abv = given.number("abv")) {
        return liquor::massFractionByVolume(*abv);
    }
    if (const auto abw = given.number("abw")) {
        return *abw;
    }
    if (const auto proof = given.number("proof")) {
        return liquor::massFractionOfUsProof(*proof);
    }
    if (const auto density = given.number("density")) {
        return liquor::massFractionByDensity(kilogramsPerCubicMetre(*density),
                                             temperatureOf(given));
    }
    SPILE_ASSIGN(abv, liquor::alcoholByVolumeByHydrometer(number(given, "hydrometer"),
                                                          temperatureOf(given)));
    return liquor::massFractionByVolume(abv);
}

Result<std::vector<Answer>> runStrength(const Given& given)
{
    SPILE_TRY(needOneOf(given, {"abv", "abw", "proof", "density", "hydrometer"}));
    SPILE_ASSIGN(abw, massFractionOf(given));
    SPILE_ASSIGN(abv, liquor::volumeFractionByMass(abw));
    SPILE_ASSIGN(proof, liquor::usProofByVolume(abv));
    SPILE_ASSIGN(density, liquor::densityByMass(abw, celsius(20)));
    SPILE_ASSIGN(perPound, liquor::spiritByWeight(pounds(1), proof));
    AnswerList answers(strengthAnswers);
    answers.add("abv", abv);
    answers.add("abw", abw);
    answers.add("proof", proof);
    answers.add("density", density.si());
    answers.add("volume-per-pound", perPound.si());
    if (given.has("volume")) {
        const Volume at20 = volumeOf(given);
        SPILE_ASSIGN(pure, liquor::pureAlcohol(at20, abv));
        SPILE_ASSIGN(densityAt60F, liquor::densityByMass(abw, sixtyF));
        SPILE_ASSIGN(gallons, liquor::proofGallons((density / densityAt60F) * at20, proof));
        answers.add("pure-alcohol", pure.si());
        answers.add("proof-gallons", usGallons(gallons).si());
    }
    return answers.done();
}

// --- gravity

constexpr std::string_view farText = "The sample is far from 20 °C: read it again nearer to it.";
constexpr std::string_view nearText = "Near enough to 20 °C.";
constexpr std::array gravityTexts = {farText, nearText};

constexpr std::array gravityInputs = {
    gravityInput("reading", "Reading of the hydrometer", none),
    temperatureInput("temperature", "Temperature of the sample", 20, 0, 40),
    temperatureInput("reference", "Temperature the hydrometer is made for", 20, 15, 25)};

constexpr std::array gravityAnswers = {gravityAnswer("gravity", "Specific gravity 20/20 °C"),
                                       platoAnswer("plato", "Degrees Plato"),
                                       wordAnswer("temperature", "Temperature of the sample")};

constexpr std::array gravitySources = {
    FormulaSource{"degrees Plato below 1.101", "ASBC Methods of Analysis, cubic fit"},
    FormulaSource{"degrees Plato above 1.110", "NBS Circular 440 (1942), cubic fit"},
    FormulaSource{"density of water", "Tanaka et al., Metrologia 38 (2001) 301"},
    FormulaSource{"widening of the glass", "ISO 1768:1975"}};

Result<std::vector<Answer>> runGravity(const Given& given)
{
    const Temperature sample = temperatureOf(given);
    SPILE_ASSIGN(gravity, liquor::correctedGravity(number(given, "reading"), sample,
                                                   temperatureOf(given, "reference")));
    SPILE_ASSIGN(plato, liquor::degreesPlato(gravity));
    const bool isFar = liquor::isFarFromReference(sample);
    AnswerList answers(gravityAnswers);
    answers.add("gravity", gravity);
    answers.add("plato", plato);
    answers.say("temperature", isFar ? farText : nearText, isFar);
    return answers.done();
}

// --- alcohol

constexpr std::array alcoholInputs = {
    gravityInput("final", "Gravity now", none),
    optional(gravityInput("original", "Gravity before fermentation", none, 1, 1.17)),
    optional(strengthInput("abv", "Alcohol by volume, if it was measured", none, 0, 0.25))};

constexpr std::array alcoholAnswers = {
    strengthAnswer("abv", "Alcohol by volume at 20 °C", 3),
    AnswerSpec{"abw", "Alcohol by mass", Measurand::AlcoholByMass, "%", "%", 3},
    gravityAnswer("original", "Gravity before fermentation"),
    platoAnswer("original-extract", "Original extract"),
    platoAnswer("real-extract", "Real extract"),
    platoAnswer("apparent-extract", "Apparent extract"),
    shareAnswer("real-attenuation", "Real attenuation"),
    shareAnswer("apparent-attenuation", "Apparent attenuation"),
    strengthAnswer("duty-abv", "By the duty's table, as a check", 3)};

constexpr std::array alcoholSources = {
    FormulaSource{"alcohol and original extract", "Balling (1865), as De Clerck and MEBAK give it"},
    tabarieSource, FormulaSource{"check", "HM Revenue and Customs, Excise Notice 226, 30.3"}};

Result<std::vector<Answer>> runAlcohol(const Given& given)
{
    SPILE_TRY(needOneOf(given, {"original", "abv"}));
    const bool isFermented = given.has("original");
    const double present = number(given, "final");
    SPILE_ASSIGN(beer, isFermented ? liquor::strengthByGravities(number(given, "original"), present)
                                   : liquor::strengthByAlcohol(present, number(given, "abv")));
    AnswerList answers(alcoholAnswers);
    if (isFermented) {
        answers.add("abv", beer.alcoholByVolume,
                    std::max(0.0, beer.alcoholByVolume - beer.uncertaintyAbv),
                    beer.alcoholByVolume + beer.uncertaintyAbv);
    } else {
        answers.add("abv", beer.alcoholByVolume);
    }
    answers.add("abw", beer.alcoholByMass);
    SPILE_ASSIGN(original, liquor::specificGravityOfPlato(beer.originalExtract));
    answers.add("original", original);
    answers.add("original-extract", beer.originalExtract);
    answers.add("real-extract", beer.realExtract);
    answers.add("apparent-extract", beer.apparentExtract);
    if (const auto real = liquor::realAttenuation(beer)) {
        answers.add("real-attenuation", *real);
    }
    if (const auto apparent = liquor::apparentAttenuation(beer)) {
        answers.add("apparent-attenuation", *apparent);
    }
    // The table ends at a difference of 0.1007, and knows nothing of a beer with spirit in it.
    if (const auto duty = liquor::hmrcAlcoholByVolume(original, present); duty && isFermented) {
        answers.add("duty-abv", *duty);
    }
    return answers.done();
}

constexpr std::array all = {
    Calculator{"strength",
               "Strength of a spirit",
               "Any measure of strength into all the others, and the pure alcohol of a volume.",
               strengthInputs,
               strengthAnswers,
               {},
               strengthSources,
               "For water and alcohol only: extract in beer or liqueur makes a density or an "
               "alcoholometer say too little.",
               page,
               runStrength},
    Calculator{"gravity", "Gravity and degrees Plato",
               "A hydrometer's reading, corrected for temperature, and its degrees Plato.",
               gravityInputs, gravityAnswers, gravityTexts, gravitySources, "", gravityPage,
               runGravity},
    Calculator{"alcohol",
               "Alcohol by gravity",
               "Strength, extract and attenuation of a beer from the gravities before and after "
               "fermentation, or from its gravity and a measured strength.",
               alcoholInputs,
               alcoholAnswers,
               {},
               alcoholSources,
               "By gravities only for a beer as fermented: not once spirit from the wood came "
               "into it.",
               gravityPage,
               runAlcohol}};

}  // namespace

std::span<const Calculator> strengthCalculators() { return all; }

}  // namespace spile::plan
