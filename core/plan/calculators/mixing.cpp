// mix, spirit-to-reach: what portions make together.
#include "core/liquor/mixing.hpp"

#include "core/plan/calculators/parts.hpp"

namespace spile::plan {

namespace {

constexpr std::string_view page = "numbers-mixing.md";
constexpr double volumeMost = 1e4;  // m3

constexpr std::array sources = {densitySource, tabarieSource};

// --- mix

constexpr std::array mixInputs = {
    volumeInput("first-volume", "Volume of the first, at 20 °C", none, 0, volumeMost),
    strengthInput("first-abv", "Strength of the first", none),
    optional(gravityInput("first-gravity", "Gravity of the first; none for a spirit", none)),
    volumeInput("second-volume", "Volume of the second, at 20 °C", none, 0, volumeMost),
    strengthInput("second-abv", "Strength of the second", none),
    optional(gravityInput("second-gravity", "Gravity of the second; none for a spirit", none))};

constexpr std::array mixAnswers = {volumeAnswer("volume", "Volume at 20 °C", 5),
                                   strengthAnswer("abv", "Alcohol by volume"),
                                   gravityAnswer("gravity", "Specific gravity"),
                                   platoAnswer("real-extract", "Real extract"),
                                   smallVolumeAnswer("contraction", "Lost by contraction"),
                                   volumeAnswer("pure-alcohol", "Pure alcohol in it"),
                                   massAnswer("mass", "Mass", 4)};

Result<liquor::Portion> portionOf(const Given& given, const std::string& which)
{
    SPILE_ASSIGN(extract, realExtractOf(given, which + "-abv", which + "-gravity"));
    return liquor::Portion{volumeOf(given, which + "-volume"), number(given, which + "-abv"),
                           extract};
}

Result<std::vector<Answer>> runMix(const Given& given)
{
    SPILE_ASSIGN(first, portionOf(given, "first"));
    SPILE_ASSIGN(second, portionOf(given, "second"));
    const std::array portions{first, second};
    SPILE_ASSIGN(mixed, liquor::mix(portions));
    AnswerList answers(mixAnswers);
    answers.add("volume", mixed.volume.si());
    answers.add("abv", mixed.alcoholByVolume);
    answers.add("gravity", mixed.specificGravity);
    answers.add("real-extract", mixed.realExtract);
    answers.add("contraction", mixed.contraction.si());
    answers.add("pure-alcohol", mixed.alcoholByVolume * mixed.volume.si());
    answers.add("mass", mixed.mass.si());
    return answers.done();
}

// --- spirit-to-reach

constexpr std::array reachInputs = {
    volumeInput("volume", "Volume of the beer, at 20 °C", none, 0, volumeMost),
    strengthInput("abv", "Strength of the beer", none),
    optional(gravityInput("gravity", "Gravity of the beer", none)),
    strengthInput("spirit-abv", "Strength of the spirit", none),
    strengthInput("target", "Strength wanted", none)};

constexpr std::array reachAnswers = {
    volumeAnswer("spirit", "Spirit to add, at 20 °C"),
    volumeAnswer("volume", "Volume of both together", 5),
    gravityAnswer("gravity", "Specific gravity of both together"),
    shareAnswer("spirit-share", "Share of the alcohol that comes of the spirit")};

Result<std::vector<Answer>> runReach(const Given& given)
{
    SPILE_ASSIGN(extract, realExtractOf(given, "abv", "gravity"));
    const liquor::Portion beer{volumeOf(given), number(given, "abv"), extract};
    const double strength = number(given, "spirit-abv");
    SPILE_ASSIGN(volume, liquor::spiritToReach(beer, strength, number(given, "target")));
    const std::array portions{beer, liquor::Portion{volume, strength, 0}};
    AnswerList answers(reachAnswers);
    answers.add("spirit", volume.si());
    if (beer.volume.si() > 0) {
        SPILE_ASSIGN(mixed, liquor::mix(portions));
        answers.add("volume", mixed.volume.si());
        answers.add("gravity", mixed.specificGravity);
        const double ofSpirit = strength * volume.si();
        const double whole = ofSpirit + beer.alcoholByVolume * beer.volume.si();
        answers.add("spirit-share", whole > 0 ? ofSpirit / whole : 0);
    }
    return answers.done();
}

constexpr std::array all = {
    Calculator{"mix",
               "Mixing two portions",
               "Volume, strength and gravity of two beers, two spirits or one of each together.",
               mixInputs,
               mixAnswers,
               {},
               sources,
               "",
               page,
               runMix},
    Calculator{"spirit-to-reach",
               "Spirit for a strength",
               "How much spirit brings a beer to a strength.",
               reachInputs,
               reachAnswers,
               {},
               sources,
               "Arithmetic, not leave: where spirit is added to beer the law may call it something "
               "else and tax it so. Ask first.",
               page,
               runReach}};

}  // namespace

std::span<const Calculator> mixingCalculators() { return all; }

}  // namespace spile::plan
