// package: what a finished volume becomes.
#include "core/plan/calculators/parts.hpp"
#include "core/plan/packaging.hpp"

namespace spile::plan {

namespace {

constexpr std::string_view nothing = "none";
// Those of packages(); kegs come first, so that bottles take the rest.
constexpr std::array<std::string_view, 21> kegWords = {
    "keg 20 L",      "keg 30 L",      "keg 50 L",        "keg 1/6 bbl",
    "keg 1/4 bbl",   "keg 1/2 bbl",   "bottle 330 mL",   "bottle 12 fl oz",
    "bottle 375 mL", "bottle 500 mL", "bottle 22 fl oz", "bottle 750 mL",
    "bottle 1.5 L",  "can 330 mL",    "can 12 fl oz",    "can 440 mL",
    "can 16 fl oz",  "cask, pin",     "cask, firkin",    "cask, kilderkin",
    nothing};
constexpr std::array<std::string_view, 21> bottleWords = {
    "bottle 375 mL", "bottle 330 mL", "bottle 12 fl oz", "bottle 500 mL", "bottle 22 fl oz",
    "bottle 750 mL", "bottle 1.5 L",  "keg 20 L",        "keg 30 L",      "keg 50 L",
    "keg 1/6 bbl",   "keg 1/4 bbl",   "keg 1/2 bbl",     "can 330 mL",    "can 12 fl oz",
    "can 440 mL",    "can 16 fl oz",  "cask, pin",       "cask, firkin",  "cask, kilderkin",
    nothing};
constexpr std::string_view unitedStates = "US";
constexpr std::array<std::string_view, 2> lawWords = {unitedStates, "EU"};

constexpr std::string_view withinText = "Within the tolerance.";
constexpr std::string_view unsureText =
    "Perhaps outside the tolerance: the measurement cannot tell.";
constexpr std::string_view outsideText = "Outside the tolerance.";
constexpr std::array texts = {withinText, unsureText, outsideText};

constexpr std::array inputs = {
    volumeInput("volume", "Volume to pack, at 20 °C", none, 1e-4, 1000),
    shareInput("loss", "Lost in hoses, foam and breakage", 0.03),
    wordInput("first", "First into", kegWords),
    countInput("first-count", "How many of them at most", 0.0, 1e6),
    wordInput("second", "The rest into", bottleWords),
    optional(countInput("second-count", "How many of them at most; else as many as it fills", none,
                        1e9)),
    optional(strengthInput("abv", "Measured strength", none)),
    strengthInput("abv-error", "How sure it is, + and -", 0.002, 0, 0.1),
    optional(strengthInput("label", "Strength on the label; else the measured one, rounded", none)),
    wordInput("law", "Whose rules the label follows", lawWords)};

constexpr std::array answerSpecs = {
    countAnswer("first-count", "Of the first"),
    countAnswer("second-count", "Of the second"),
    volumeAnswer("rest", "Left over", 3),
    volumeAnswer("lost", "Lost", 3),
    volumeAnswer("packed", "Packed"),
    AnswerSpec{"beer-barrels", "US beer barrels packed", Measurand::Volume, "bbl", "bbl", 5},
    volumeAnswer("pure-alcohol", "Pure alcohol packed"),
    strengthAnswer("label", "Strength on the label", 3),
    AnswerSpec{"tolerance", "Tolerance, + and - (points of % vol)", Measurand::AlcoholByVolume, "%",
               "%", 2},
    wordAnswer("verdict", "The label")};

constexpr std::array sources = {
    FormulaSource{"US beer barrel of 31 gallons", "27 CFR 25.11"},
    FormulaSource{"tolerance in the US", "27 CFR 7.65(c)"},
    FormulaSource{"tolerance in the EU", "Regulation (EU) No 1169/2011, Annex XII (from memory)"},
    FormulaSource{"3 % lost in packing", practice}};

// Its content; 0 for none.
Volume contentOf(const std::string& name)
{
    const auto known = packages();
    const auto found = std::find_if(known.begin(), known.end(),
                                    [&](const Package& one) { return one.name == name; });
    return found == known.end() ? Volume() : found->content;
}

Result<void> addLabel(AnswerList& answers, const Given& given, Volume packed)
{
    const double abv = number(given, "abv");
    SPILE_ASSIGN(totals, finishTotals(packed, abv));
    answers.add("pure-alcohol", totals.pureAlcohol.si());
    SPILE_ASSIGN(rounded, labelStrength(abv));
    const auto law =
        given.word("law") == unitedStates ? LabelLaw::UnitedStates : LabelLaw::EuropeanUnion;
    SPILE_ASSIGN(check, checkLabel(law, given.number("label").value_or(rounded), abv,
                                   number(given, "abv-error")));
    answers.add("label", check.labelled);
    answers.add("tolerance", check.tolerance);
    const bool isWithin = check.verdict == LabelVerdict::Within;
    answers.say("verdict",
                isWithin                                 ? withinText
                : check.verdict == LabelVerdict::Outside ? outsideText
                                                         : unsureText,
                !isWithin);
    return {};
}

Result<std::vector<Answer>> run(const Given& given)
{
    constexpr std::size_t any = 1'000'000'000'000;
    const Volume volume = volumeOf(given);
    const Volume first = contentOf(given.word("first"));
    const Volume second = contentOf(given.word("second"));
    // Of none there are none, whatever its size.
    const auto orderOf = [](Volume content, std::size_t most) {
        return content > Volume() ? PackageOrder{content, most} : PackageOrder{litres(1), 0};
    };
    const auto mostOf = [&](std::string_view name) {
        const auto most = given.number(name);
        return most ? static_cast<std::size_t>(*most) : any;
    };
    const std::array orders{orderOf(first, mostOf("first-count")),
                            orderOf(second, mostOf("second-count"))};
    std::array<std::size_t, 2> counts{};
    SPILE_ASSIGN(packed, packOrders(volume, number(given, "loss"), orders, counts));
    AnswerList answers(answerSpecs);
    answers.add("first-count", static_cast<double>(counts[0]));
    answers.add("second-count", static_cast<double>(counts[1]));
    answers.add("rest", packed.rest.si());
    answers.add("lost", packed.lost.si());
    answers.add("packed", packed.packed.si());
    answers.add("beer-barrels", packed.packed.si());
    if (given.has("abv")) {
        SPILE_TRY(addLabel(answers, given, packed.packed));
    }
    return answers.done();
}

constexpr std::array all = {Calculator{
    "package", "Packing",
    "How many kegs and bottles a volume fills, and whether the label tells its strength.", inputs,
    answerSpecs, texts, sources,
    "For beer as it is: beer with fruit, and what the law calls spirits, have other "
    "rules.",
    "numbers-packaging.md", run}};

}  // namespace

std::span<const Calculator> packingCalculators() { return all; }

}  // namespace spile::plan
