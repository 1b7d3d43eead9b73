// wet: wetting an empty barrel again with spirit.
#include "core/liquor/mixing.hpp"
#include "core/plan/calculators/barrel_inputs.hpp"
#include "core/wood/rewetting.hpp"

namespace spile::plan {

namespace {

constexpr std::string_view asItIsText = "Fill it as it is.";
constexpr std::string_view rewetText = "Re-wet it with spirit before it is filled.";
constexpr std::string_view swellText = "Swell it first, then re-wet it.";
constexpr std::string_view proveText = "Prove first that it still holds water.";
constexpr std::array texts = {asItIsText, rewetText, swellText, proveText};

constexpr std::array inputs = {
    sizeInput(),
    daysInput("empty", "How long it has stood empty", 21.0, 0, 3650),
    strengthInput("spirit-abv", "Strength of the spirit", 0.45),
    optional(volumeInput("poured", "Spirit that was poured in", none, 0, 1)),
    optional(volumeInput("drained", "Spirit that was drained", none, 0, 1)),
    optional(strengthInput("drained-abv", "Strength of what was drained", none)),
    optional(volumeInput("beer-volume", "Beer to come; else the barrel's size", none, 1e-3, 5)),
    strengthInput("beer-abv", "Strength of the beer", 0.10, 0, 0.25),
    gravityInput("beer-gravity", "Gravity of the beer", 1.015)};

constexpr std::array answerSpecs = {
    wordAnswer("needs", "What it needs"),
    volumeAnswer("spirit", "Spirit to pour in", 2),
    daysAnswer("time", "For how long, turned and stood on either head"),
    volumeAnswer("left", "Spirit that stayed", 3),
    strengthAnswer("left-abv", "Its strength", 3),
    AnswerSpec{"gain", "Strength the beer gains, at most (points of % vol)",
               Measurand::AlcoholByVolume, "%", "%", 2},
    strengthAnswer("abv", "Alcohol by volume then", 3),
    gravityAnswer("gravity", "Specific gravity then")};

constexpr std::array sources = {
    FormulaSource{"2 to 4 L for 53 gallons, 2 to 7 days; days empty", practice}, densitySource,
    tabarieSource, sizeSource};

std::string_view textOf(wood::EmptyBarrel needs)
{
    switch (needs) {
        case wood::EmptyBarrel::FillAsItIs:
            return asItIsText;
        case wood::EmptyBarrel::Rewet:
            return rewetText;
        case wood::EmptyBarrel::SwellFirst:
            return swellText;
        case wood::EmptyBarrel::ProveItHolds:
            break;
    }
    return proveText;
}

Result<liquor::Liquor> beerOf(const Given& given)
{
    SPILE_ASSIGN(extract, realExtractOf(given, "beer-abv", "beer-gravity"));
    return liquor::liquorOf(volumeOf(given, given.has("beer-volume") ? "beer-volume" : "size"),
                            number(given, "beer-abv"), extract);
}

// What stayed, from what was measured.
Result<liquor::Liquor> leftOf(const Given& given)
{
    const double strength = number(given, "spirit-abv");
    const liquor::Portion poured{volumeOf(given, "poured"), strength, 0};
    const liquor::Portion drained{cubicMetres(number(given, "drained")),
                                  given.number("drained-abv").value_or(strength), 0};
    return wood::leftByRewetting(poured, drained);
}

Result<void> addGain(AnswerList& answers, const Given& given, const wood::Rewetting& wet)
{
    SPILE_ASSIGN(beer, beerOf(given));
    const auto with = [&](Volume spirit) -> Result<wood::WithSpirit> {
        SPILE_ASSIGN(poured, liquor::liquorOf(spirit, number(given, "spirit-abv"), 0));
        return wood::withSpirit(beer, poured);
    };
    SPILE_ASSIGN(low, with(wet.spirit.low));
    SPILE_ASSIGN(median, with(wet.spirit.median));
    SPILE_ASSIGN(high, with(wet.spirit.high));
    answers.add("gain", median.strengthGained, std::min(low.strengthGained, high.strengthGained),
                std::max(low.strengthGained, high.strengthGained));
    answers.add("abv", median.mixed.alcoholByVolume);
    answers.add("gravity", median.mixed.specificGravity);
    return {};
}

Result<void> addMeasuredGain(AnswerList& answers, const Given& given)
{
    SPILE_ASSIGN(left, leftOf(given));
    SPILE_ASSIGN(beer, beerOf(given));
    if (left.mass() > Mass()) {
        SPILE_ASSIGN(stayed, liquor::describe(left));
        SPILE_ASSIGN(with, wood::withSpirit(beer, left));
        answers.add("left", stayed.volume.si());
        answers.add("left-abv", stayed.alcoholByVolume);
        answers.add("gain", with.strengthGained);
        answers.add("abv", with.mixed.alcoholByVolume);
        answers.add("gravity", with.mixed.specificGravity);
    } else {
        answers.add("left", 0);
    }
    return {};
}

Result<std::vector<Answer>> run(const Given& given)
{
    SPILE_ASSIGN(inner, innerAreaOf(given));
    const Duration empty = durationOf(given, "empty");
    SPILE_ASSIGN(needs, wood::emptyBarrelNeeds(empty));
    SPILE_ASSIGN(wet, wood::rewetting(inner, empty));
    AnswerList answers(answerSpecs);
    answers.say("needs", textOf(needs), needs == wood::EmptyBarrel::ProveItHolds);
    if (needs != wood::EmptyBarrel::FillAsItIs) {
        answers.addSpread("spirit", wet.spirit);
        answers.add("time", wet.usual.si(), wet.shortest.si(), wet.longest.si());
    }
    if (given.has("poured")) {
        SPILE_TRY(addMeasuredGain(answers, given));
    } else if (needs != wood::EmptyBarrel::FillAsItIs) {
        SPILE_TRY(addGain(answers, given, wet));
    }
    return answers.done();
}

constexpr std::array all = {Calculator{
    "wet", "Re-wetting a barrel",
    "How much spirit an empty barrel needs before beer comes in, and what of it the beer "
    "gets.",
    inputs, answerSpecs, texts, sources,
    "Spirit and its vapour burn: no flame, no hot tool, no smoking. Where spirit reaches "
    "beer, ask what the law calls it.",
    "numbers-wetting.md", run}};

}  // namespace

std::span<const Calculator> wettingCalculators() { return all; }

}  // namespace spile::plan
