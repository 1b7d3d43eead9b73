// The registry of calculators: sane as data, sound in what it refuses, and wired to the right
// formulas. The formulas themselves have their published values in tests/reference.
#include "core/plan/calculators/calculator.hpp"
#include "core/plan/calculators/dip_table.hpp"
#include "core/plan/packaging.hpp"
#include "core/units/units.hpp"
#include "tests/support/calculator_samples.hpp"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace spile::plan {

using testing::HasSubstr;

namespace {

using Typed = std::vector<std::pair<std::string, std::string>>;

const Calculator& calculator(std::string_view name)
{
    const Calculator* found = findCalculator(name);
    EXPECT_NE(found, nullptr) << name;
    return found == nullptr ? calculators().front() : *found;
}

Given typed(const Calculator& of, const Typed& inputs)
{
    Given given;
    for (const auto& [name, text] : inputs) {
        const CalculatorInput* input = findInput(of, name);
        if (input == nullptr) {
            ADD_FAILURE() << of.name << " has no input " << name;
            continue;
        }
        const auto taken = giveTyped(given, *input, text);
        EXPECT_TRUE(taken) << name << '=' << text;
    }
    return given;
}

Result<std::vector<Answer>> answered(std::string_view name, const Typed& inputs)
{
    const Calculator& of = calculator(name);
    return calculate(of, typed(of, inputs));
}

const Answer* find(const std::vector<Answer>& answers, std::string_view name)
{
    const auto found = std::find_if(answers.begin(), answers.end(),
                                    [&](const Answer& answer) { return answer.name == name; });
    return found == answers.end() ? nullptr : &*found;
}

// One answer of a calculator, in SI; a failed test if it does not come.
Answer answer(std::string_view of, const Typed& inputs, std::string_view name)
{
    const auto answers = answered(of, inputs);
    if (!answers) {
        ADD_FAILURE() << of << ": " << answers.error().subject << ' ' << answers.error().value
                      << ' ' << answers.error().limit;
        return {};
    }
    const Answer* found = find(*answers, name);
    EXPECT_NE(found, nullptr) << of << " does not answer " << name;
    return found == nullptr ? Answer{} : *found;
}

double value(std::string_view of, const Typed& inputs, std::string_view name)
{
    return answer(of, inputs, name).value;
}

Error refusal(std::string_view name, const Typed& inputs)
{
    const auto answers = answered(name, inputs);
    EXPECT_FALSE(answers) << name;
    return answers ? Error{} : answers.error();
}

bool isUnitOf(std::string_view symbol, Measurand measurand)
{
    const auto units = unitsOf(measurand);
    return std::any_of(units.begin(), units.end(),
                       [&](const UnitSpec& unit) { return unit.symbol == symbol; });
}

void checkInput(const CalculatorInput& input)
{
    SCOPED_TRACE(input.name);
    EXPECT_FALSE(input.label.empty());
    EXPECT_FALSE(expectedOf(input).empty());
    if (!input.words.empty()) {
        const std::set<std::string_view> words(input.words.begin(), input.words.end());
        EXPECT_EQ(words.size(), input.words.size());
        return;
    }
    EXPECT_LT(input.least, input.most);
    EXPECT_FALSE(input.usual && input.mayBeLeftOut);
    for (const std::string_view unit : {input.metricUnit, input.usUnit}) {
        EXPECT_TRUE(isUnitOf(unit, input.measurand)) << unit;
        const auto shown =
            formatQuantity(input.usual.value_or(input.most), input.measurand, unit, 15);
        ASSERT_TRUE(shown) << unit;
        EXPECT_TRUE(parseInput(input, *shown)) << *shown;
    }
    EXPECT_GT(input.metricStep, 0);
    EXPECT_GT(input.usStep, 0);
    EXPECT_GE(input.usual.value_or(input.least), input.least);
    EXPECT_LE(input.usual.value_or(input.most), input.most);
}

}  // namespace

TEST(Calculators, HaveNamesOfTheirOwnAndWhatAPageShows)
{
    std::set<std::string_view> names;
    for (const Calculator& one : calculators()) {
        SCOPED_TRACE(one.name);
        EXPECT_TRUE(names.insert(one.name).second);
        EXPECT_EQ(findCalculator(one.name), &one);
        EXPECT_FALSE(one.title.empty());
        EXPECT_TRUE(one.use.ends_with('.'));
        EXPECT_TRUE(one.caution.empty() || one.caution.ends_with('.'));
        EXPECT_TRUE(one.handbook.starts_with("numbers-"));
        EXPECT_FALSE(one.sources.empty());
        for (const FormulaSource& source : one.sources) {
            EXPECT_FALSE(source.formula.empty());
            EXPECT_FALSE(source.publication.empty()) << source.formula;
        }
        for (const std::string_view text : one.texts) {
            EXPECT_TRUE(text.ends_with('.')) << text;
        }
    }
    EXPECT_EQ(names.size(), 22U);
    EXPECT_EQ(findCalculator("nonsense"), nullptr);
}

TEST(Calculators, AskInUnitsAndRangesThatMakeSense)
{
    for (const Calculator& one : calculators()) {
        SCOPED_TRACE(one.name);
        std::set<std::string_view> names;
        for (const CalculatorInput& input : one.inputs) {
            EXPECT_TRUE(names.insert(input.name).second) << input.name;
            checkInput(input);
        }
    }
}

TEST(Calculators, AnswerInUnitsOfWhatTheyMeasure)
{
    for (const Calculator& one : calculators()) {
        SCOPED_TRACE(one.name);
        std::set<std::string_view> names;
        for (const AnswerSpec& spec : one.answers) {
            SCOPED_TRACE(spec.name);
            EXPECT_TRUE(names.insert(spec.name).second);
            EXPECT_FALSE(spec.label.empty());
            EXPECT_TRUE(isUnitOf(spec.metricUnit, spec.measurand));
            EXPECT_TRUE(isUnitOf(spec.usUnit, spec.measurand));
            EXPECT_GE(spec.digits, 1);
            EXPECT_LE(spec.digits, 9);
        }
    }
}

TEST(Calculators, AnswerWithTheirUsualInputsWhereAllHaveOne)
{
    int count = 0;
    for (const Calculator& one : calculators()) {
        SCOPED_TRACE(one.name);
        const bool hasUsuals =
            std::all_of(one.inputs.begin(), one.inputs.end(), [](const CalculatorInput& input) {
                return input.usual || input.mayBeLeftOut || !input.words.empty();
            });
        const auto answers = calculate(one, {});
        if (!answers) {
            // What is asked for is then an input that has no usual value.
            EXPECT_NE(findInput(one, answers.error().subject), nullptr) << answers.error().subject;
            EXPECT_EQ(answers.error().code, ErrorCode::Malformed);
        } else {
            EXPECT_TRUE(hasUsuals);
            EXPECT_FALSE(answers->empty());
            ++count;
        }
    }
    EXPECT_EQ(count, 10);
}

TEST(Calculators, AnswerPlausibleInputsInTheWordsTheyDeclare)
{
    std::set<std::string> sampled;
    for (const support::CalculatorSample& sample : support::calculatorSamples()) {
        SCOPED_TRACE(sample.calculator);
        const Calculator& one = calculator(sample.calculator);
        sampled.insert(sample.calculator);
        const auto answers = answered(sample.calculator, sample.inputs);
        ASSERT_TRUE(answers) << answers.error().subject << ' ' << answers.error().value;
        EXPECT_FALSE(answers->empty());
        std::set<std::string> names;
        for (const Answer& each : *answers) {
            SCOPED_TRACE(each.name);
            EXPECT_TRUE(names.insert(each.name).second);
            EXPECT_FALSE(each.label.empty());  // its name is in the specs
            EXPECT_EQ(each.low.has_value(), each.high.has_value());
            EXPECT_LE(each.low.value_or(each.value), each.value);
            EXPECT_GE(each.high.value_or(each.value), each.value);
            EXPECT_TRUE(each.text.empty() ||
                        std::find(one.texts.begin(), one.texts.end(), each.text) != one.texts.end())
                << each.text;
        }
    }
    EXPECT_EQ(sampled.size(), calculators().size());
}

TEST(Calculators, RefuseByTheNameOfTheInput)
{
    const Calculator& purge = calculator("purge");
    Given given;
    given.set("colour", 1);
    EXPECT_EQ(calculate(purge, given).error(),
              (Error{ErrorCode::Malformed, "colour", "", "an input of purge"}));
    EXPECT_EQ(refusal("purge", {{"pressure", "100bar"}}),
              (Error{ErrorCode::OutOfRange, "pressure", "100 bar", "0.01 to 10 bar"}));
    Given infinite;
    infinite.set("pressure", std::numeric_limits<double>::infinity());
    EXPECT_EQ(calculate(purge, infinite).error().code, ErrorCode::NotFinite);
    EXPECT_EQ(calculate(purge, infinite).error().subject, "pressure");
    const Error missing = refusal("flat", {});
    EXPECT_EQ(missing.code, ErrorCode::Malformed);
    EXPECT_EQ(missing.subject, "now");
    EXPECT_EQ(missing.value, "");
    Given word;
    word.setWord("how", "by magic");
    EXPECT_EQ(calculate(calculator("carbonate"), word).error(),
              (Error{ErrorCode::Malformed, "how", "by magic", "standing, shaken or stone"}));
    EXPECT_EQ(refusal("strength", {{"abv", "40%"}, {"proof", "80proof"}}).value, "abv and proof");
    EXPECT_EQ(refusal("gauge", {{"dip", "300mm"}, {"bilge", "600mm"}}).limit,
              "length, bilge and head: all three or none");
    EXPECT_EQ(refusal("mix", {{"first-volume", "1L"},
                              {"first-abv", "60%"},
                              {"first-gravity", "1.02"},
                              {"second-volume", "1L"},
                              {"second-abv", "10%"}})
                  .subject,
              "first-gravity");
    EXPECT_EQ(refusal("gauge", {{"gross", "50kg"}, {"tare", "60kg"}}).subject, "tare");
    EXPECT_EQ(refusal("prime", {{"volume", "20L"}, {"target", "0.5vol"}}).subject, "target");
}

TEST(Calculators, TakeLimitsInEitherUnit)
{
    EXPECT_TRUE(answered("residual", {{"temperature", "30C"}}));
    EXPECT_TRUE(answered("residual", {{"temperature", "86F"}}));
    EXPECT_TRUE(answered("residual", {{"temperature", "32F"}}));
    EXPECT_FALSE(answered("residual", {{"temperature", "86.1F"}}));
}

TEST(Calculators, ReadGravityAsEither)
{
    const CalculatorInput& reading = *findInput(calculator("gravity"), "reading");
    EXPECT_EQ(parseInput(reading, "1.084"), 1.084);
    EXPECT_NEAR(*parseInput(reading, "20P"), 1.0830, 0.0001);  // 20 °P: seen in the ASBC tables
    EXPECT_EQ(parseInput(reading, "20Q").error().code, ErrorCode::Malformed);
    EXPECT_EQ(parseInput(reading, "99P").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(parseInput(reading, "strong").error().limit, "a gravity such as 1.084 or 20P");
}

TEST(Calculators, TakeWordsWithHyphens)
{
    const CalculatorInput& method = *findInput(calculator("oxygen"), "method");
    Given given;
    EXPECT_TRUE(giveTyped(given, method, "sample-hole"));
    EXPECT_EQ(given.word("method"), "sample hole");
    EXPECT_FALSE(giveTyped(given, method, "samplehole"));
    EXPECT_FALSE(parseInput(method, "sample hole"));
}

TEST(Calculators, OfferThePackagesOfTheTrade)
{
    const CalculatorInput& first = *findInput(calculator("package"), "first");
    const CalculatorInput& second = *findInput(calculator("package"), "second");
    EXPECT_EQ(first.words.size(), packages().size() + 1);
    for (const Package& one : packages()) {
        EXPECT_THAT(first.words, testing::Contains(one.name));
        EXPECT_THAT(second.words, testing::Contains(one.name));
    }
}

TEST(Calculators, ShowRangesInUnits)
{
    const CalculatorInput& bore = *findInput(calculator("purge"), "hose-bore");
    EXPECT_EQ(rangeOf(bore), "0.5 to 100 mm");
    EXPECT_EQ(rangeOf(bore, true), "0.019685 to 3.93701 in");
    EXPECT_EQ(expectedOf(bore), "a number with one of mm, cm, m, in, ft");
}

TEST(DipTable, HasItsRowsFromEmptyToFull)
{
    const auto rows = dipRowsOf(typed(calculator("dip-table"), {{"step", "1mm"}}));
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 601U);
    EXPECT_EQ(rows->front().volume.si(), 0);
    EXPECT_NEAR(inUsGallons(rows->back().volume), 53, 1e-6);
    EXPECT_EQ(dipRowsOf(typed(calculator("dip-table"), {{"step", "0.1mm"}})).error().subject,
              "step");
    EXPECT_EQ(value("dip-table", {{"step", "1mm"}}, "rows"), 601);
}

// Each against a figure that was found outside this project, or by hand.
TEST(CalculatorAnswers, AreThoseOfTheirFormulas)
{
    // Proof and percent at 20 °C: seen in the tables of 27 CFR 30.
    EXPECT_NEAR(value("strength", {{"proof", "100proof"}}, "abv"), 0.5006, 5e-5);
    EXPECT_NEAR(value("strength", {{"proof", "100proof"}, {"volume", "1L"}}, "pure-alcohol"),
                0.5006e-3, 5e-8);
    EXPECT_NEAR(value("gravity", {{"reading", "1.0830"}}, "plato"), 20.0, 0.02);  // seen, ASBC
    // The duty's table by hand: 0.080 times 135, the factor of its row; seen.
    EXPECT_NEAR(value("alcohol", {{"original", "1.100"}, {"final", "1.020"}}, "duty-abv"), 0.1072,
                0.0009);
    // Half the dip of a level barrel is half its volume.
    EXPECT_NEAR(value("gauge", {{"size", "225L"}, {"dip", "318.5mm"}}, "share"), 0.5, 1e-3);
    EXPECT_NEAR(value("gauge", {{"gross", "150kg"}, {"tare", "50kg"}, {"gravity", "1"}}, "volume"),
                0.1002865, 2e-5);  // 100 kg of water in air at 20 °C, by hand
    // Computed outside this project: worked example of a purge.
    const Typed purge{{"volume", "200L"},    {"pressure", "5psi"},   {"hose-bore", "6mm"},
                      {"hose-length", "0m"}, {"temperature", "20C"}, {"time", "10min"}};
    EXPECT_NEAR(value("purge", purge, "gas"), 3.53, 0.01);
    EXPECT_NEAR(value("purge", purge, "oxygen"), 0.00137e-2, 0.0001e-2);
    EXPECT_NEAR(value("purge-cycles", {{"pressure", "5psi"}, {"cycles", "10"}}, "oxygen"), 0.0112,
                5e-5);
    // 1 kg in 50 m3: computed likewise.
    EXPECT_NEAR(value("room-air", {{"mass", "1kg"}, {"room", "50m3"}, {"temperature", "20C"}},
                      "without-air"),
                10'900e-6, 50e-6);
    EXPECT_NEAR(value("push", {{"pressure", "5psi"}, {"head", "520mm"}}, "head-force"), 7320, 5);
    EXPECT_NEAR(value("residual", {{"temperature", "20C"}}, "volumes"), 0.86, 0.005);  // memory
    // (2.4 - 0.8) 1.977 20 / 0.5143, by hand.
    EXPECT_NEAR(value("prime", {{"volume", "20L"}, {"now", "0.8vol"}}, "sugar"), 0.1230, 1e-4);
    // 53 gallons for a year: 4, 8 and 16 mg in each of 200.6 L; memory.
    EXPECT_NEAR(value("oxygen", {{"time", "1y"}}, "wood"), 8e-3 * 0.2006, 2e-5);
    EXPECT_EQ(value("package", {{"volume", "100L"}, {"loss", "0%"}, {"second", "keg-30-L"}},
                    "second-count"),
              3);
    EXPECT_NEAR(value("package", {{"volume", "31gal"}, {"loss", "0%"}}, "beer-barrels"),
                factor::usBeerBarrel, 4e-4);
}

TEST(CalculatorAnswers, KeepTheMassOfWhatIsMixed)
{
    const Typed both{{"first-volume", "100L"},
                     {"first-abv", "10%"},
                     {"second-volume", "50L"},
                     {"second-abv", "60%"}};
    EXPECT_NEAR(value("mix", both, "pure-alcohol"), 0.040, 1e-6);
    EXPECT_GT(value("mix", both, "contraction"), 0);
    const double spirit = value(
        "spirit-to-reach",
        {{"volume", "100L"}, {"abv", "10%"}, {"spirit-abv", "60%"}, {"target", "20%"}}, "spirit");
    Given again = typed(calculator("mix"), both);
    again.set("second-volume", spirit);
    const auto mixed = calculate(calculator("mix"), again);
    ASSERT_TRUE(mixed);
    EXPECT_NEAR(find(*mixed, "abv")->value, 0.20, 1e-9);
}

TEST(CalculatorAnswers, SayWhereALimitIsPassed)
{
    EXPECT_FALSE(answer("push", {{"pressure", "1.9psi"}}, "pressure").caution);
    EXPECT_TRUE(answer("push", {{"pressure", "3psi"}}, "pressure").caution);
    const auto refused = answered("push", {{"pressure", "6psi"}});
    ASSERT_TRUE(refused);
    EXPECT_EQ(find(*refused, "time"), nullptr);
    EXPECT_TRUE(answer("flat", {{"now", "1.5vol"}}, "flat").caution);
    EXPECT_FALSE(answer("flat", {{"now", "0.5vol"}}, "flat").caution);
    EXPECT_TRUE(answer("room-air", {{"mass", "3.5kg"}, {"room", "30m3"}}, "room-air").caution);
    EXPECT_TRUE(answer("purge", {{"cylinder", "0.1kg"}}, "cylinder").caution);
    EXPECT_TRUE(answer("gauge", {{"gross", "300kg"}, {"tare", "50kg"}}, "check").caution);
    EXPECT_TRUE(
        answer("prime", {{"volume", "1L"}, {"target", "3.5vol"}}, "bottle-pressure").caution);
    EXPECT_TRUE(
        answer("package", {{"volume", "1L"}, {"abv", "12%"}, {"label", "11%"}}, "verdict").caution);
}

// Common practice, no source: ten minutes at 5 psi through a quarter inch is far more than enough
// for a 53 gallon barrel.
TEST(TradePractice, TenMinutesAtFivePsiPurgeABarrel)
{
    EXPECT_LT(value("purge",
                    {{"volume", "53gal"},
                     {"pressure", "5psi"},
                     {"hose-bore", "6.35mm"},
                     {"hose-length", "0m"},
                     {"time", "10min"}},
                    "oxygen"),
              0.1e-3);
}

// Common practice, no source: 53 gallons of which 45 are found after six months lost more than
// evaporation and soaking in.
TEST(TradePractice, EightGallonsInSixMonthsAreMoreThanTheWoodTakes)
{
    const Typed loss{{"full", "53gal"},
                     {"found", "45gal"},
                     {"time", "182d"},
                     {"temperature", "18C"},
                     {"humidity", "65%"}};
    const Answer verdict = answer("explain", loss, "verdict");
    EXPECT_THAT(verdict.text, HasSubstr("More than evaporation, soaking in"));
    EXPECT_TRUE(verdict.caution);
    const double beyond = value("explain", loss, "unexplained");
    EXPECT_GT(beyond, 2 * value("explain", loss, "reading-error"));
    // Dry for months before, the wood explains more of it, but not all.
    Typed dry = loss;
    dry.emplace_back("empty", "120d");
    EXPECT_LT(value("explain", dry, "unexplained"), beyond);
    EXPECT_TRUE(answer("explain", dry, "verdict").caution);
    // A usual loss is no cause for alarm.
    EXPECT_FALSE(answer("explain", {{"full", "53gal"}, {"found", "51gal"}}, "verdict").caution);
}

// Common practice, no source: 2 to 5 % a year from 53 gallons.
TEST(TradePractice, ABarrelLosesAFewPercentAYear)
{
    const double yearly = value("loss", {{"time", "365d"}}, "yearly");
    EXPECT_GT(yearly, 0.02);
    EXPECT_LT(yearly, 0.05);
}

}  // namespace spile::plan
