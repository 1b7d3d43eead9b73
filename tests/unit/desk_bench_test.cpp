// The desk's bench as a person or a script uses it: spile-desk bench.
#include "tests/support/command.hpp"
#include "tests/support/temp_folder.hpp"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;

namespace {

class DeskBench : public testing::Test {
protected:
    support::TempFolder folder;

    Ended bench(const std::string& spec, std::vector<std::string> more = {})
    {
        const std::string file = (folder.path() / "spec.json").string();
        std::ofstream(file) << spec;
        std::vector<std::string> words{"--cellar", "/nowhere/at/all", "bench", file};
        words.insert(words.end(), more.begin(), more.end());
        return support::run(SPILE_DESK, words);
    }
    Ended bench(const json& spec, std::vector<std::string> more = {})
    {
        return bench(spec.dump(), std::move(more));
    }
};

// The first of the reference instances.
json spec()
{
    const std::vector<std::vector<double>> mean = {{5.6, 6.3, 5.5}, {2.9, 6.4, 5.7},
                                                   {4.1, 5.9, 5.6}, {5.5, 5, 5.9},
                                                   {3.8, 4.7, 4.2}, {6, 5.1, 4.5}};
    const std::vector<std::vector<double>> sd = {{.38, .4, .6},   {.41, .49, .69}, {.68, .59, .52},
                                                 {.41, .36, .69}, {.51, .35, .55}, {.61, .55, .67}};
    const auto three = [](const std::vector<double>& numbers) {
        return json{{"oak", numbers[0]}, {"rum", numbers[1]}, {"vanilla", numbers[2]}};
    };
    json made{{"target", three({5, 4.5, 5.5})}, {"barrels", json::array()}, {"max_barrels", 3}};
    for (std::size_t i = 0; i < mean.size(); ++i) {
        made["barrels"].push_back({{"name", std::to_string(i + 1)},
                                   {"volume_l", 200},
                                   {"strength_abv", 11},
                                   {"mean", three(mean[i])},
                                   {"sd", three(sd[i])}});
    }
    return made;
}

}  // namespace

TEST_F(DeskBench, AnswersWithTheBestFirst)
{
    const Ended ended = bench(spec(), {"--json", "--answers", "3"});
    ASSERT_EQ(ended.exit, 0) << ended.err;
    const json all = ended.json();
    ASSERT_EQ(all.at("answers").size(), 3U);
    const json& best = all.at("answers")[0];
    EXPECT_NEAR(best.at("expected_square_distance"), .812225, 5e-7);
    ASSERT_EQ(best.at("barrels").size(), 2U);
    EXPECT_EQ(best.at("barrels")[0].at("name"), "4");
    EXPECT_EQ(best.at("barrels")[1].at("name"), "5");
    EXPECT_EQ(best.at("barrels")[0].at("volume_l"), 200);
    EXPECT_EQ(best.at("barrels")[0].at("bench_ml"), 50);
    EXPECT_NEAR(best.at("strength_abv"), 11, 1e-9);
    EXPECT_TRUE(best.at("chance_in_window").is_null());
    EXPECT_EQ(all.at("bound"), best.at("expected_square_distance"));
    EXPECT_EQ(all.at("proven"), true);
    EXPECT_TRUE(all.at("in_the_way").empty());
}

TEST_F(DeskBench, SaysItInATable)
{
    json asked = spec();
    asked["window"] = {{"oak", {4, 6}}};
    const Ended ended = bench(asked);
    ASSERT_EQ(ended.exit, 0) << ended.err;
    EXPECT_THAT(ended.out, HasSubstr("4 (200.0; 50.0), 5 (200.0; 50.0)"));
    EXPECT_THAT(ended.out, HasSubstr("in 10"));
    EXPECT_THAT(ended.out, HasSubstr("No blend of these barrels comes nearer than the first."));
}

TEST_F(DeskBench, TakesAPartAndKeepsTheStrength)
{
    json asked = spec();
    asked["max_part"] = 1;
    asked["min_part_share"] = 0.2;
    asked["barrels"][3]["strength_abv"] = 12.5;
    asked["strength_max_abv"] = 11.5;
    const Ended ended = bench(asked, {"--json"});
    ASSERT_EQ(ended.exit, 0) << ended.err;
    const json best = ended.json().at("answers")[0];
    EXPECT_LE(best.at("strength_abv"), 11.5 + 1e-6);
    int parts = 0;
    for (const json& barrel : best.at("barrels")) {
        const double litres = barrel.at("volume_l");
        EXPECT_GE(litres, 40 - 1e-6);
        parts += litres < 200 ? 1 : 0;
    }
    EXPECT_LE(parts, 1);
}

TEST_F(DeskBench, NamesWhatIsInTheWay)
{
    json asked = spec();
    asked["window"] = {{"rum", {2, 3}}};
    const Ended ended = bench(asked, {"--json"});
    ASSERT_EQ(ended.exit, 0) << ended.err;
    const json all = ended.json();
    EXPECT_TRUE(all.at("answers").empty());
    ASSERT_EQ(all.at("in_the_way").size(), 1U);
    EXPECT_EQ(all.at("in_the_way")[0].at("what"), "rum");
    EXPECT_NEAR(all.at("in_the_way")[0].at("reached"), 4.7, 1e-9);
    EXPECT_EQ(all.at("in_the_way")[0].at("bound"), 3);
    EXPECT_THAT(bench(asked).out, HasSubstr("rum comes to 4.70, asked for 3.00"));
}

TEST_F(DeskBench, NamesWhatIsWrongWithTheFile)
{
    const auto refused = [&](const std::string& text, const std::string& words) {
        const Ended ended = bench(text);
        EXPECT_EQ(ended.exit, 2) << text;
        EXPECT_THAT(ended.err, HasSubstr(words));
        EXPECT_EQ(ended.out, "");
    };
    refused("{", "bench file");
    refused("{}", "barrels");
    refused(R"({"barrels": [], "colour": 1})", "colour");
    json asked = spec();
    asked["barrels"][1]["mean"].erase("rum");
    refused(asked.dump(), "rum");
    asked = spec();
    asked["barrels"][0]["volume_l"] = -3;
    refused(asked.dump(), "amount of 1");
    asked = spec();
    asked["strength_min_abv"] = 10;
    asked["barrels"][2].erase("strength_abv");
    refused(asked.dump(), "strength_abv of 3");
    asked = spec();
    asked["max_barrels"] = 9;
    refused(asked.dump(), "1 to 8");
    asked = spec();
    asked["window"] = {{"oak", {6, 4}}};
    refused(asked.dump(), "window of oak");
}

}  // namespace spile
