// The registry of calculators: sane as data, and sound in what it refuses.
#include "core/plan/calculators/calculator.hpp"
#include "core/plan/calculators/dip_table.hpp"
#include "core/plan/packaging.hpp"
#include "core/units/units.hpp"
#include "tests/support/calculator_samples.hpp"
#include "tests/support/typed_calculators.hpp"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace spile::plan {

using namespace support;

namespace {

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
    for (const CalculatorSample& sample : calculatorSamples()) {
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
    EXPECT_NEAR(*parseInput(reading, "20P"), 1.0830, 0.0001);  // ASBC; memory
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

}  // namespace spile::plan
