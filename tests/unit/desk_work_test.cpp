// The desk's calculators as a person or a script uses them: spile-desk work.
#include "core/plan/calculators/calculator.hpp"
#include "tests/support/calculator_samples.hpp"
#include "tests/support/command.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;

// Where there is no cellar.
static Ended work(std::vector<std::string> words)
{
    words.insert(words.begin(), {"--cellar", "/nowhere/at/all", "work"});
    return support::run(SPILE_DESK, words);
}

static json answerOf(const Ended& ended, const std::string& name)
{
    const json all = ended.json();
    for (const json& answer : all.at("answers")) {
        if (answer.at("name") == name) {
            return answer;
        }
    }
    ADD_FAILURE() << "no answer " << name << " in " << ended.out;
    return {};
}

static std::vector<std::string> typed(const support::CalculatorSample& sample)
{
    std::vector<std::string> words{sample.calculator};
    for (const auto& [name, text] : sample.inputs) {
        words.insert(words.end(), {"--" + name, text});
    }
    return words;
}

TEST(DeskWork, ListsAllCalculators)
{
    const Ended listed = work({"--json"});
    ASSERT_EQ(listed.exit, 0) << listed.err;
    std::set<std::string> names;
    for (const json& one : listed.json()) {
        names.insert(one.at("name").get<std::string>());
        EXPECT_FALSE(one.at("use").get<std::string>().empty());
    }
    EXPECT_EQ(names.size(), plan::calculators().size());
    const Ended text = work({});
    EXPECT_EQ(text.exit, 0);
    for (const plan::Calculator& one : plan::calculators()) {
        EXPECT_TRUE(names.contains(std::string(one.name)));
        EXPECT_THAT("\n" + text.out, HasSubstr("\n" + std::string(one.name) + " "));
    }
}

TEST(DeskWork, AnswersEachWithPlausibleInputs)
{
    std::set<std::string> ran;
    for (const support::CalculatorSample& sample : support::calculatorSamples()) {
        SCOPED_TRACE(sample.calculator);
        std::vector<std::string> words = typed(sample);
        if (ran.insert(sample.calculator).second) {
            const Ended text = work(words);
            EXPECT_EQ(text.exit, 0) << text.err;
            EXPECT_THAT(text.out, HasSubstr("\nSources\n"));
            EXPECT_EQ(text.err, "");
        }
        words.emplace_back("--json");
        const Ended ended = work(words);
        ASSERT_EQ(ended.exit, 0) << ended.err;
        const json all = ended.json();
        EXPECT_EQ(all.at("calculator"), sample.calculator);
        for (const auto& [name, text] : sample.inputs) {
            EXPECT_TRUE(all.at("inputs").contains(name)) << name;
        }
        EXPECT_FALSE(all.at("answers").empty());
        for (const json& answer : all.at("answers")) {
            EXPECT_TRUE(answer.at("value").is_number() ||
                        !answer.at("text").get<std::string>().empty())
                << answer;
        }
        EXPECT_FALSE(all.at("sources").empty());
    }
    EXPECT_EQ(ran.size(), plan::calculators().size());
}

TEST(DeskWork, TakesInputsInThreeForms)
{
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"gravity", "--reading", "20P"},
          std::vector<std::string>{"gravity", "--reading=20P"},
          std::vector<std::string>{"gravity", "reading=20 P"}}) {
        std::vector<std::string> all = words;
        all.emplace_back("--json");
        EXPECT_NEAR(answerOf(work(all), "plato").at("value"), 20, 1e-6);
    }
    // A value below 0 is not taken for an option. By hand: 14.8 kPa drive 1.78 m/s through the
    // hose.
    EXPECT_NEAR(answerOf(work({"push", "--lift", "-0.8m", "--pressure", "1psi", "--json"}), "flow")
                    .at("value"),
                12.1, 0.1);
}

TEST(DeskWork, AnswersInMetricUnitsAndShowsUsOnes)
{
    const Ended ended = work({"strength", "--proof", "100proof", "--volume", "1gal", "--json"});
    EXPECT_EQ(answerOf(ended, "pure-alcohol").at("unit"), "L");
    EXPECT_NEAR(answerOf(ended, "pure-alcohol").at("value"), 1.895, 0.001);
    EXPECT_NEAR(answerOf(ended, "abv").at("value"), 50.06, 0.005);
    EXPECT_EQ(ended.json().at("inputs").at("volume"), (json{{"value", 3.78541178}, {"unit", "L"}}));
    const Ended us = work({"strength", "--proof", "100proof", "--volume", "1gal", "--us"});
    EXPECT_THAT(us.out, HasSubstr("0.5006 gal"));
}

TEST(DeskWork, SaysTheCautionFirst)
{
    EXPECT_THAT(work({"purge"}).out, testing::StartsWith("Caution: The barrel is open"));
    EXPECT_THAT(work({"push", "--pressure", "8psi"}).out, HasSubstr("! Pressure"));
}

TEST(DeskWork, PrintsTheDipTable)
{
    const Ended ended = work({"dip-table", "--step", "100mm", "--json"});
    const json all = ended.json();
    ASSERT_EQ(all.at("rows").size(), 7U);
    EXPECT_EQ(all.at("rows").at(1).at("dip_mm"), 100);
    EXPECT_NEAR(all.at("rows").at(6).at("volume_l"), 200.6, 0.1);
    EXPECT_THAT(work({"dip-table", "--step", "100mm"}).out,
                HasSubstr("\ndip mm  L\n0.0     0.00\n"));
    EXPECT_THAT(work({"dip-table", "--step", "2in", "--us"}).out, HasSubstr("\n2.000 "));
}

TEST(DeskWork, RefusesAWrongOrMissingUnit)
{
    const Ended bare = work({"purge", "--volume", "53"});
    EXPECT_EQ(bare.exit, 2);
    EXPECT_EQ(bare.out, "");
    EXPECT_THAT(bare.err,
                HasSubstr("--volume: 53 has no unit; expected a number with one of L, mL"));
    const Ended foreign = work({"purge", "--volume", "53psi", "--json"});
    EXPECT_EQ(foreign.exit, 2);
    EXPECT_THAT(foreign.err,
                HasSubstr("--volume: 53psi is not right; expected a number with one of"));
    EXPECT_EQ(foreign.json().at("error").at("subject"), "volume");
    EXPECT_EQ(foreign.json().at("error").at("code"), "malformed");
}

TEST(DeskWork, RefusesWhatIsMissingOrOutOfRange)
{
    const Ended missing = work({"flat"});
    EXPECT_EQ(missing.exit, 2);
    EXPECT_THAT(missing.err, HasSubstr("--now is missing; expected a number with one of vol"));
    const Ended noValue = work({"flat", "--now"});
    EXPECT_EQ(noValue.exit, 2);
    EXPECT_THAT(noValue.err, HasSubstr("--now is missing"));
    const Ended outside = work({"purge", "--pressure", "100bar"});
    EXPECT_EQ(outside.exit, 2);
    EXPECT_THAT(outside.err,
                HasSubstr("--pressure: 100 bar is outside its range; expected 0.01 to 10 bar"));
    // Out of a formula's range, by the formula's own name.
    EXPECT_EQ(work({"push", "--pressure", "0psi", "--lift", "1m"}).exit, 2);
    EXPECT_EQ(work({"strength", "--abv", "40%", "--proof", "80proof"}).exit, 2);
}

TEST(DeskWork, NamesTheNearestOfWhatItDoesNotKnow)
{
    const Ended calculator = work({"guage"});
    EXPECT_EQ(calculator.exit, 2);
    EXPECT_THAT(calculator.err, HasSubstr("there is no calculator guage; the nearest: gauge"));
    const Ended input = work({"purge", "--presure", "5psi"});
    EXPECT_EQ(input.exit, 2);
    EXPECT_THAT(input.err, HasSubstr("there is no input presure; the nearest: pressure"));
    const Ended word = work({"carbonate", "--how", "magic"});
    EXPECT_EQ(word.exit, 2);
    EXPECT_THAT(word.err,
                HasSubstr("--how: magic is not right; expected standing, shaken or stone"));
}

TEST(DeskWork, ShowsWhatACalculatorAsksFor)
{
    for (const plan::Calculator& one : plan::calculators()) {
        SCOPED_TRACE(one.name);
        const Ended help = work({std::string(one.name), "--help"});
        EXPECT_EQ(help.exit, 0);
        for (const plan::CalculatorInput& input : one.inputs) {
            EXPECT_THAT(help.out, HasSubstr("--" + std::string(input.name) + " "));
        }
        EXPECT_THAT(help.out, HasSubstr(std::string(one.sources.front().publication)));
    }
    const json help = work({"purge", "--help", "--json"}).json();
    const json& bore = help.at("inputs").at(2);
    EXPECT_EQ(bore.at("name"), "hose-bore");
    EXPECT_EQ(bore.at("unit"), "mm");
    EXPECT_EQ(bore.at("usual"), 6);
    EXPECT_EQ(bore.at("least"), 0.5);
    EXPECT_EQ(bore.at("most"), 100);
}

}  // namespace spile
