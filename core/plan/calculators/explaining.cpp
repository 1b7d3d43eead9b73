// explain: where beer went that is no longer in the barrel.
#include "core/liquor/mixing.hpp"
#include "core/plan/calculators/barrel_inputs.hpp"
#include "core/plan/calculators/losses.hpp"
#include "core/wood/explanation.hpp"
#include "core/wood/loss_rate.hpp"

namespace spile::plan {

namespace {

constexpr std::string_view explainedText = "Evaporation and soaking in can explain it.";
constexpr std::string_view shortFillText =
    "More than evaporation and soaking in explain; a short fill could.";
constexpr std::string_view unexplainedText =
    "More than evaporation, soaking in and a short fill explain: look for a leak, and for draws "
    "that nobody wrote down.";
constexpr std::string_view gainText = "There is not less than there was: nothing to explain.";
constexpr std::array texts = {explainedText, shortFillText, unexplainedText, gainText};

constexpr std::array<std::string_view, 4> filledWords = {"filled full", "meter", "weight", "dip"};
constexpr std::array<std::string_view, 4> foundWords = {"dip", "weight", "meter", "filled full"};

constexpr std::array inputs = {
    volumeInput("full", "Beer that was put in", spiritBarrel, 1e-3, 5),
    volumeInput("found", "Beer that was found", none, 0, 5),
    optional(volumeInput("drawn", "Drawn meanwhile, less what was topped up", none, 0, 5)),
    wordInput("filled-by", "How the first was measured", filledWords),
    wordInput("found-by", "How the second was measured", foundWords),
    daysInput("time", "Time between", 182.0, 0, 3650),
    temperatureInput("temperature", "Mean temperature of the cellar", 15, -15, 45),
    shareInput("humidity", "Mean relative humidity", 0.70),
    strengthInput("abv", "Strength of the beer", 0.10, 0, 0.25),
    gravityInput("gravity", "Gravity of the beer", 1.015),
    staveInput(),
    daysInput("empty", "How long the barrel stood empty before", 14.0, 0, 3650),
    daysInput("rewetted", "How long it was wetted again", 0.0, 0, 365)};

constexpr std::array answerSpecs = {
    wordAnswer("verdict", "In short"),
    volumeAnswer("lost", "Lost", 3),
    volumeAnswer("evaporation", "Evaporation", 2),
    volumeAnswer("soakage", "Soaked into the wood", 2),
    volumeAnswer("short-fill", "Short fill, perhaps", 2),
    volumeAnswer("most", "Most that evaporation and soaking in take", 3),
    volumeAnswer("unexplained", "Beyond that", 3),
    volumeAnswer("reading-error", "Error of the two measures", 2)};

constexpr std::array sources = {
    FormulaSource{"water's vapour pressure", "Buck Research manual (1996)"}, densitySource,
    FormulaSource{"error of a meter", "27 CFR 25.42"},
    FormulaSource{"error of dip and weight; short fill; what wood lets through and drinks",
                  practice},
    sizeSource};

wood::GaugeMethod methodOf(const std::string& word)
{
    return word == "weight"        ? wood::GaugeMethod::Weight
           : word == "meter"       ? wood::GaugeMethod::Meter
           : word == "filled full" ? wood::GaugeMethod::FilledFull
                                   : wood::GaugeMethod::Dip;
}

// The barrel's size is what was put in.
Given sized(const Given& given)
{
    Given all = given;
    all.set("size", number(given, "full"));
    return all;
}

Result<wood::LossCase> caseOf(const Given& given)
{
    const Volume full = volumeOf(given, "full");
    SPILE_ASSIGN(extract, realExtractOf(given, "abv", "gravity"));
    SPILE_ASSIGN(start, liquor::liquorOf(full, number(given, "abv"), extract));
    SPILE_ASSIGN(prior, woodOf(sized(given)));
    SPILE_ASSIGN(first, wood::readingDeviation(methodOf(given.word("filled-by")), full));
    SPILE_ASSIGN(second, wood::readingDeviation(methodOf(given.word("found-by")), full));
    return wood::LossCase{start,
                          prior,
                          climateOf(given),
                          durationOf(given),
                          durationOf(given, "empty"),
                          durationOf(given, "rewetted"),
                          full - volumeOf(given, "found") - cubicMetres(number(given, "drawn")),
                          2 * wood::deviationOfLoss(first, second)};
}

Result<std::vector<Answer>> run(const Given& given)
{
    SPILE_ASSIGN(seen, caseOf(given));
    SPILE_ASSIGN(found, wood::explainLoss(seen));
    const std::string_view verdict = seen.lost <= Volume()     ? gainText
                                     : found.moreThanShortFill ? unexplainedText
                                     : found.moreThanExplained ? shortFillText
                                                               : explainedText;
    AnswerList answers(answerSpecs);
    answers.say("verdict", verdict, found.moreThanExplained);
    answers.add("lost", seen.lost.si());
    // Near balance in humid air the middle one of three permeances may take most or least.
    const auto& [low, median, high] = found.evaporation;
    answers.add("evaporation", median.si(), std::min(low, median).si(),
                std::max(high, median).si());
    answers.addSpread("soakage", found.soakage);
    answers.addSpread("short-fill", found.shortFill);
    answers.add("most", found.most.si());
    answers.add("unexplained", found.unexplained.si()).caution = found.moreThanExplained;
    answers.add("reading-error", seen.readingError.si());
    return answers.done();
}

constexpr std::array all = {Calculator{
    "explain", "Explaining a loss",
    "How much of what is missing evaporation, soaking in and a short fill explain.", inputs,
    answerSpecs, texts, sources, "Measure again before you move a barrel, and look under it.",
    "numbers-losses.md", run}};

}  // namespace

std::span<const Calculator> explainingCalculators() { return all; }

}  // namespace spile::plan
