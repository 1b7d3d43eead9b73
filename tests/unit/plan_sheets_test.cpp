// The form of work sheets, and every sheet that comes with the app: what it names is there.
#include "core/plan/asks.hpp"
#include "core/plan/numbers.hpp"
#include "core/plan/sheet.hpp"
#include "core/plan/working.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <set>
#include <sstream>

namespace spile::plan {

using testing::Contains;
using testing::ElementsAre;

namespace {

const std::filesystem::path folder = std::filesystem::path(SPILE_SOURCE_DIR) / "assets/sheets";

std::string textOf(const std::filesystem::path& file)
{
    std::ifstream in(file);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

std::vector<Sheet> shippedSheets()
{
    std::vector<Sheet> all;
    for (const auto& file : std::filesystem::directory_iterator(folder)) {
        if (file.path().extension() == ".sheet") {
            auto sheet = parseSheet(textOf(file.path()));
            EXPECT_TRUE(sheet.has_value())
                << file.path() << ": " << sheet.error().value << ": " << sheet.error().limit;
            if (sheet) {
                EXPECT_EQ(sheet->name, file.path().stem());
                all.push_back(std::move(*sheet));
            }
        }
    }
    return all;
}

std::set<std::string> labelled()
{
    std::set<std::string> names;
    const auto labels = parseLabels(textOf(folder / "labels.txt"));
    for (const Label& label : labels.value()) {
        EXPECT_TRUE(names.insert(label.name).second) << label.name << " twice";
    }
    return names;
}

std::set<std::string> cautioned()
{
    std::set<std::string> names;
    const auto cautions = parseCautions(textOf(folder / "cautions.txt"));
    for (const Caution& caution : cautions.value()) {
        EXPECT_TRUE(names.insert(caution.name).second) << caution.name << " twice";
    }
    return names;
}

void expectMalformed(std::string_view text, const std::string& line)
{
    const auto sheet = parseSheet(text);
    ASSERT_FALSE(sheet.has_value()) << text;
    EXPECT_EQ(sheet.error().code, ErrorCode::Malformed);
    EXPECT_EQ(sheet.error().value, line);
    EXPECT_FALSE(sheet.error().limit.empty());
}

const std::string head = "sheet: s\ntitle: A sheet\n";

}  // namespace

TEST(ParseSheet, ReadsAllThatAStepMaySay)
{
    const auto sheet = parseSheet(
        "# not read\nsheet: s\ntitle: A sheet\nfor: full\nonly: top_ups\n\nstep: one\nsay: Do {a} "
        "and {b}\nhint: h\ncaution: c\ntick: t | A tick\nask: volume_ml when way=meter\n"
        "fact: full\ntimer: 24 h\nhold: yes\nclose: Close it\nrecord: fill\nwhen: finding!=dry\n");
    ASSERT_TRUE(sheet.has_value());
    EXPECT_EQ(sheet->barrels, SheetFor::Full);
    EXPECT_EQ(sheet->only, "top_ups");
    ASSERT_EQ(sheet->steps.size(), 1U);
    const Step& step = sheet->steps.front();
    EXPECT_THAT(namesIn(step.say), ElementsAre("a", "b"));
    EXPECT_EQ(step.ticks.at(0).words, "A tick");
    EXPECT_EQ(step.asks.at(0).when, (Condition{"way", "meter", false}));
    EXPECT_EQ(step.timer.value().minutes, 24 * 60);
    EXPECT_TRUE(step.hold);
    EXPECT_EQ(step.when, (Condition{"finding", "dry", true}));
}

TEST(ParseSheet, NamesTheLineThatIsWrong)
{
    expectMalformed(head + "step: a\nsay: x\nshout: y\n", "shout: y");
    expectMalformed(head + "step: a\nsay: x\nstep: a\nsay: y\n", "step: a");
    expectMalformed(head + "step: a\nsay: x\ntimer: ten minutes\n", "ten minutes");
    expectMalformed(head + "step: a\nsay: x\ntick: no words\n", "tick: no words");
    expectMalformed(head + "step: a\nsay: x\nwhen: y\n", "y");
    expectMalformed(head + "step: a\nsay:\n", "say:");
    expectMalformed(head + "step: a\nhint: x\n", "a");
    expectMalformed("title: x\nstep: a\nsay: x\n", "");
    expectMalformed("for: nobody\n", "for: nobody");
}

TEST(ParseCautions, WantsNameWordsAndSource)
{
    EXPECT_TRUE(parseCautions("a | words | source\n").has_value());
    EXPECT_FALSE(parseCautions("a | words\n").has_value());
    EXPECT_FALSE(parseLabels("a |\n").has_value());
}

TEST(ShippedSheets, AreThoseOfTheTrade)
{
    std::set<std::string> names;
    for (const Sheet& sheet : shippedSheets()) {
        names.insert(sheet.name);
    }
    EXPECT_THAT(names, ElementsAre("between", "carbonate", "empty", "fill", "finish", "gauge",
                                   "leaks", "package", "purge", "receive", "sample_hole", "swell",
                                   "syringe", "top_up", "treat"));
}

TEST(ShippedSheets, NameOnlyWhatThereIs)
{
    const auto labels = labelled();
    const auto cautions = cautioned();
    const auto numbers = numberNames();
    const auto knowsNumber = [&](const std::string& name) {
        return std::find(numbers.begin(), numbers.end(), name) != numbers.end();
    };
    for (const Sheet& sheet : shippedSheets()) {
        for (const Step& step : sheet.steps) {
            SCOPED_TRACE(sheet.name + " / " + step.name);
            for (const std::string& words : {step.say, step.hint, step.close}) {
                for (const std::string& name : namesIn(words)) {
                    EXPECT_TRUE(knowsNumber(name)) << name;
                }
            }
            for (const std::string& caution : step.cautions) {
                EXPECT_THAT(cautions, Contains(caution));
            }
            for (const Tick& tick : step.ticks) {
                EXPECT_TRUE(namesIn(tick.words).empty()) << "no number is filled in there";
            }
            for (const Part& ask : step.asks) {
                EXPECT_NE(findAsk(ask.name), nullptr) << ask.name;
                EXPECT_THAT(labels, Contains(ask.name));
            }
            for (const Part& fact : step.facts) {
                EXPECT_TRUE(knowsNumber(fact.name)) << fact.name;
                EXPECT_THAT(labels, Contains(fact.name));
            }
            for (const std::string& record : step.records) {
                EXPECT_TRUE(knowsRecord(record)) << record;
            }
            if (step.timer && !step.timer->number.empty()) {
                EXPECT_TRUE(knowsNumber(step.timer->number)) << step.timer->number;
            }
        }
    }
}

TEST(ShippedSheets, AskBeforeTheyCompare)
{
    for (const Sheet& sheet : shippedSheets()) {
        std::set<std::string> asked;
        for (const Step& step : sheet.steps) {
            SCOPED_TRACE(sheet.name + " / " + step.name);
            if (step.when) {
                EXPECT_THAT(asked, Contains(step.when->value));
            }
            for (const Part& ask : step.asks) {
                asked.insert(ask.name);
            }
            for (const auto& parts : {step.asks, step.facts}) {
                for (const Part& part : parts) {
                    if (part.when) {
                        EXPECT_THAT(asked, Contains(part.when->value));
                    }
                }
            }
        }
    }
}

// Where work can hurt someone the caution stands before the step.
TEST(ShippedSheets, StandACautionBeforeGasPressureSpiritAndTasting)
{
    for (const Sheet& sheet : shippedSheets()) {
        for (const Step& step : sheet.steps) {
            SCOPED_TRACE(sheet.name + " / " + step.name);
            if (step.hold) {
                EXPECT_FALSE(step.cautions.empty());
                EXPECT_FALSE(step.close.empty()) << "what to close when it is stopped";
            }
            const auto asks = [&](std::string_view name) {
                return std::any_of(step.asks.begin(), step.asks.end(),
                                   [&](const Part& part) { return part.name == name; });
            };
            if (asks("spirit_ml")) {
                EXPECT_THAT(step.cautions, Contains("no_flame"));
                EXPECT_THAT(step.cautions, Contains("spirit_law"));
            }
            if (tastes(step)) {
                EXPECT_THAT(step.cautions, Contains("spit"));
            }
            if (step.say.find("gas, slowly") != std::string::npos) {
                EXPECT_THAT(step.cautions, Contains("co2_room"));
                EXPECT_THAT(step.cautions, Contains("vent_open"));
            }
        }
    }
}

// The words of cautions name numbers too: of a step that comes after what they are made from.
TEST(ShippedSheets, NameNumbersInCautionsThatThereAre)
{
    const auto numbers = numberNames();
    const auto cautions = parseCautions(textOf(folder / "cautions.txt")).value();
    for (const Caution& caution : cautions) {
        for (const std::string& name : namesIn(caution.words)) {
            EXPECT_NE(std::find(numbers.begin(), numbers.end(), name), numbers.end()) << name;
        }
    }
}

TEST(Asks, HaveRangesThatHoldTheirUsualValues)
{
    std::set<std::string_view> names;
    for (const AskSpec& ask : allAsks()) {
        SCOPED_TRACE(ask.name);
        EXPECT_TRUE(names.insert(ask.name).second);
        if (ask.kind == AskKind::Number) {
            EXPECT_LT(ask.least, ask.most);
            EXPECT_GE(ask.usual, ask.least);
            EXPECT_LE(ask.usual, ask.most);
            for (const Scale& scale : {ask.metric, ask.us}) {
                EXPECT_GT(scale.step, 0);
                EXPECT_EQ(stored(shown(ask.usual, scale), scale), ask.usual);
            }
            EXPECT_TRUE(checkAsk(ask.name, ask.usual).has_value());
            EXPECT_FALSE(checkAsk(ask.name, ask.most + 1).has_value());
        } else if (ask.kind == AskKind::Words) {
            EXPECT_FALSE(ask.words.empty());
        }
    }
    EXPECT_DOUBLE_EQ(shown(20'000, findAsk("temp_mc")->us), 68);
    EXPECT_EQ(stored(53, findAsk("volume_ml")->us), 200'627);
}

}  // namespace spile::plan
