// loss, soak: what a barrel loses to the air and to its wood.
#include "core/plan/calculators/losses.hpp"

#include "core/liquor/extract.hpp"
#include "core/liquor/mixing.hpp"
#include "core/plan/calculators/barrel_inputs.hpp"
#include "core/wood/loss_band.hpp"
#include "core/wood/soakage.hpp"

#include <cmath>

namespace spile::plan {

namespace {

constexpr std::string_view page = "numbers-losses.md";

// --- loss

constexpr std::array lossInputs = {
    volumeInput("volume", "Beer in the barrel, at 20 °C", spiritBarrel, 1e-3, 5),
    strengthInput("abv", "Strength of the beer", 0.10, 0, 0.25),
    gravityInput("gravity", "Gravity of the beer", 1.015),
    optional(plainInput("extract", "Real extract, if it was measured", Measurand::DegreesPlato,
                        none, 0, 44, "P", 0.1)),
    sizeInput(),
    optional(CalculatorInput{"area",
                             "Inner surface, if it was measured",
                             Measurand::Area,
                             none,
                             0.01,
                             100,
                             "m2",
                             "ft2",
                             0.05,
                             0.5,
                             {},
                             false}),
    staveInput(),
    temperatureInput("temperature", "Temperature of the cellar", 15, -15, 45),
    shareInput("humidity", "Relative humidity", 0.70),
    daysInput("time", "Time", 182.0, 1, 1827),
    daysInput("empty", "How long the barrel stood empty before", 0.0, 0, 3650)};

constexpr std::array lossAnswers = {volumeAnswer("volume", "Beer left"),
                                    volumeAnswer("lost", "Lost", 3),
                                    strengthAnswer("abv", "Alcohol by volume then"),
                                    gravityAnswer("gravity", "Specific gravity then"),
                                    massAnswer("water", "Water that evaporates"),
                                    massAnswer("ethanol", "Alcohol that evaporates"),
                                    shareAnswer("yearly", "Evaporation in a year, of the beer", 2),
                                    volumeAnswer("soaked", "Soaked into the wood by then", 2)};

constexpr std::array lossSources = {
    FormulaSource{"water's vapour pressure", "Buck Research manual (1996)"},
    FormulaSource{"alcohol's vapour pressure", "Antoine equation for ethanol, 273 to 351 K"},
    FormulaSource{"activities of water and alcohol",
                  "Redlich-Kister, fitted to published pressures at 25 °C; Henry's constant by "
                  "Sander, Atmos. Chem. Phys. 15 (2015) 4399"},
    densitySource,
    tabarieSource,
    FormulaSource{"what wood lets through; what it drinks", practice},
    sizeSource};

Result<double> extractOf(const Given& given)
{
    if (const auto extract = given.number("extract")) {
        return *extract;
    }
    return realExtractOf(given, "abv", "gravity");
}

// What evaporates, in the middle of what is likely.
Result<void> addEvaporation(AnswerList& answers, const liquor::Liquor& start,
                            const wood::WoodPrior& prior, std::span<const wood::Climate> days)
{
    std::vector<wood::CourseDay> course(days.size());
    SPILE_TRY(wood::lossCourse(start, {prior.inner, prior.stave}, days, course));
    const wood::CourseDay& last = course.back();
    SPILE_ASSIGN(left, liquor::liquorOf(last.volume, last.alcoholByVolume, last.realExtract));
    SPILE_ASSIGN(before, liquor::describe(start));
    answers.add("water", (start.water - left.water).si());
    answers.add("ethanol", (start.ethanol - left.ethanol).si());
    const double years = static_cast<double>(days.size()) * factor::day / factor::year;
    answers.add("yearly", (before.volume - last.volume) / before.volume / years);
    return {};
}

Result<std::vector<Answer>> runLoss(const Given& given)
{
    SPILE_ASSIGN(extract, extractOf(given));
    SPILE_ASSIGN(start, liquor::liquorOf(volumeOf(given), number(given, "abv"), extract));
    SPILE_ASSIGN(prior, woodOf(given));
    SPILE_ASSIGN(inTheEnd, wood::soakagePrior(prior.inner, durationOf(given, "empty")));
    const auto count = static_cast<std::size_t>(std::lround(inDays(durationOf(given))));
    const std::vector<wood::Climate> days(std::max<std::size_t>(count, 1), climateOf(given));
    std::vector<wood::BandDay> band(days.size());
    SPILE_TRY(wood::lossBand(start, prior, inTheEnd, days, band));
    const wood::BandDay& last = band.back();
    const Volume first = volumeOf(given);
    AnswerList answers(lossAnswers);
    answers.addSpread("volume", last.volume);
    answers.add("lost", (first - last.volume.median).si(), (first - last.volume.high).si(),
                (first - last.volume.low).si());
    answers.add("abv", last.alcoholByVolume.median, last.alcoholByVolume.low,
                last.alcoholByVolume.high);
    answers.add("gravity", last.specificGravity.median, last.specificGravity.low,
                last.specificGravity.high);
    SPILE_TRY(addEvaporation(answers, start, prior, days));
    SPILE_ASSIGN(soaked, wood::soakedBy(durationOf(given)));
    answers.addSpread("soaked", soaked * inTheEnd);
    return answers.done();
}

// --- soak

constexpr std::array soakInputs = {
    sizeInput(), daysInput("empty", "How long it has stood empty", 21.0, 0, 3650),
    daysInput("rewetted", "How long it was wetted again", 0.0, 0, 365)};

constexpr std::array soakAnswers = {volumeAnswer("soaked", "The wood will drink", 2),
                                    volumeAnswer("two-weeks", "Of it in two weeks", 2)};

constexpr std::array soakSources = {FormulaSource{"what dry wood drinks", practice}, sizeSource};

Result<std::vector<Answer>> runSoak(const Given& given)
{
    SPILE_ASSIGN(inner, innerAreaOf(given));
    SPILE_ASSIGN(soaked, wood::soakagePrior(inner, durationOf(given, "empty"),
                                            durationOf(given, "rewetted")));
    SPILE_ASSIGN(share, wood::soakedBy(days(14)));
    AnswerList answers(soakAnswers);
    answers.addSpread("soaked", soaked);
    answers.addSpread("two-weeks", share * soaked);
    return answers.done();
}

constexpr std::array all = {
    Calculator{"loss",
               "Loss in the barrel",
               "What evaporates and soaks in, and what it does to strength and gravity.",
               lossInputs,
               lossAnswers,
               {},
               lossSources,
               "Barrels of one row differ by a factor of 2 to 3. A joint that weeps is not in it: "
               "gauge the barrel.",
               page,
               runLoss},
    Calculator{"soak",
               "Soaking in",
               "What the wood drinks of a filling.",
               soakInputs,
               soakAnswers,
               {},
               soakSources,
               "",
               page,
               runSoak}};

}  // namespace

std::span<const Calculator> lossCalculators() { return all; }

wood::Climate climateOf(const Given& given)
{
    return {temperatureOf(given), number(given, "humidity")};
}

Result<wood::WoodPrior> woodOf(const Given& given)
{
    SPILE_ASSIGN(usual, innerAreaOf(given));
    SPILE_ASSIGN(stave, staveOf(given));
    wood::WoodPrior prior;
    prior.inner = squareMetres(given.number("area").value_or(usual.si()));
    prior.stave = stave;
    return prior;
}

}  // namespace spile::plan
