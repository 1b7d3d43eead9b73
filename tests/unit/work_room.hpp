#pragma once

#include "core/cellar/lots.hpp"
#include "core/plan/asks.hpp"
#include "core/plan/working.hpp"
#include "tests/support/small_cellar.hpp"

#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

/// Working the sheets that come with the app, on a small cellar.
namespace spile::plan {

inline Sheet shipped(const std::string& name)
{
    std::ifstream in(std::string(SPILE_SOURCE_DIR) + "/assets/sheets/" + name + ".sheet");
    std::stringstream text;
    text << in.rdbuf();
    return parseSheet(text.str()).value();
}

using Filled = std::map<std::string, cellar::WorkValue>;
inline cellar::WorkValue number(std::int64_t value) { return {value, {}}; }
inline cellar::WorkValue word(const std::string& text) { return {{}, text}; }

// A barrel of 200 L with 190 L of beer, and what is worked on it and its lot.
struct WorkRoom {
    support::TestDevice device{52};
    std::unique_ptr<cellar::Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);

    [[nodiscard]] SubjectId begin(const Sheet& sheet, const SubjectId& subject) const
    {
        return cellar::beginWork(*cellar, sheet.name, sheet.steps.front().name, subject,
                                 small.person)
            .value();
    }
    void fillIn(const SubjectId& run, const Step& step, const Filled& filled) const
    {
        const auto keep = [&](const std::string& name, const cellar::WorkValue& value) {
            ASSERT_TRUE(cellar::keepValue(*cellar, run, name, value).has_value()) << name;
        };
        for (const Tick& tick : step.ticks) {
            keep(tick.name, number(1));
        }
        for (const Part& part : step.asks) {
            const AskSpec& ask = *findAsk(part.name);
            const auto given = filled.find(part.name);
            if (given != filled.end()) {
                keep(part.name, given->second);
            } else if (ask.kind == AskKind::Number && !ask.optional) {
                keep(part.name, number(ask.usual));
            } else if (ask.kind == AskKind::Words && !ask.optional) {
                keep(part.name, word(std::string(ask.words.front())));
            }
        }
    }
    // Works it through; returns the steps it took and what stopped it, "" if nothing did.
    std::string work(const std::string& name, const SubjectId& subject, const Filled& filled,
                     std::vector<std::string>* steps = nullptr) const
    {
        const Sheet sheet = shipped(name);
        const SubjectId run = begin(sheet, subject);
        for (int guard = 0; guard < 30; ++guard) {
            const Step& step = *findStep(sheet, cellar::readWork(*cellar, run)->step);
            if (steps != nullptr) {
                steps->push_back(step.name);
            }
            fillIn(run, step, filled);
            const auto finished = finishStep(*cellar, sheet, run, {});
            if (!finished) {
                return step.name + ": " + finished.error().subject + ": " + finished.error().value;
            }
            if (finished->nextStep.empty()) {
                return "";
            }
        }
        return "it does not end";
    }
    [[nodiscard]] SubjectId lot() const
    {
        const auto all = cellar::lots(cellar->database(), {}, 5).value();
        return all.empty() ? SubjectId() : all.front().lot;
    }
    [[nodiscard]] cellar::LotHistory lotHistory() const
    {
        return cellar::lotHistory(cellar->database(), lot()).value();
    }
    [[nodiscard]] cellar::BarrelRow row() const
    {
        return *cellar::barrelById(cellar->database(), small.barrel).value();
    }
    [[nodiscard]] WorkFacts facts(const SubjectId& subject, const Filled& values = {}) const
    {
        auto facts = readFacts(cellar->database(), subject, device.clock.now()).value();
        facts.values = {values.begin(), values.end()};
        return facts;
    }
    // A lot of 180 L at 11 %.
    [[nodiscard]] SubjectId withLot() const
    {
        EXPECT_EQ(work("empty", small.barrel,
                       {{"lot", word("Harbour")},
                        {"out_ml", number(180'000)},
                        {"kit", word("clean")},
                        {"abv_e2", number(1'100)}}),
                  "");
        return lot();
    }
};

}  // namespace spile::plan
