// The desk's bench with the demo's own barrels: spile-desk bench --target.
#include "tests/support/command.hpp"
#include "tests/support/temp_folder.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;

namespace {

class DeskCellarBench : public testing::Test {
protected:
    support::TempFolder folder;
    std::string cellar = (folder.path() / "demo").string();

    Ended desk(std::vector<std::string> words)
    {
        words.insert(words.begin(), {"--cellar", cellar});
        return support::run(SPILE_DESK, words);
    }
};

}  // namespace

TEST_F(DeskCellarBench, AnswersWithTheCellarsOwnBarrels)
{
    ASSERT_EQ(desk({"demo"}).exit, 0);
    const std::string target = "Night Ferry, ready";
    const Ended wrong = desk({"bench", "--target", "Nobody's"});
    EXPECT_EQ(wrong.exit, 1);
    EXPECT_THAT(wrong.err, HasSubstr("; " + target));
    const Ended found = desk({"--json", "bench", "--target", target, "--most", "2", "--part"});
    ASSERT_EQ(found.exit, 0) << found.err;
    const json answer = json::parse(found.out);
    EXPECT_TRUE(answer.at("proven"));
    ASSERT_FALSE(answer.at("answers").empty()) << found.out;
    const json& first = answer.at("answers")[0];
    double poured = 0;
    double volume = 0;
    for (const json& barrel : first.at("barrels")) {
        poured += barrel.at("bench_ml").get<double>();
        volume += barrel.at("volume_l").get<double>();
    }
    EXPECT_DOUBLE_EQ(poured, 100);
    EXPECT_NEAR(first.at("volume_l").at("middle"), volume, volume * 1e-3);
    EXPECT_LT(first.at("strength_abv").at("low"), first.at("strength_abv").at("high"));

    const std::string code = first.at("barrels")[0].at("code");
    const Ended without =
        desk({"--json", "bench", "--target", target, "--most", "2", "--keep", code});
    ASSERT_EQ(without.exit, 0) << without.err;
    for (const json& other : json::parse(without.out).at("answers")) {
        for (const json& barrel : other.at("barrels")) {
            EXPECT_NE(barrel.at("code"), code);
        }
    }
    const Ended none =
        desk({"--json", "bench", "--target", target, "--most", "1", "--abv-min", "24"});
    ASSERT_EQ(none.exit, 0) << none.err;
    const json empty = json::parse(none.out);
    EXPECT_TRUE(empty.at("answers").empty());
    ASSERT_FALSE(empty.at("in_the_way").empty());
    EXPECT_THAT(desk({"bench", "--target", target}).out, HasSubstr("Every set of barrels"));
}

TEST_F(DeskCellarBench, NeedsAFileOrATarget)
{
    EXPECT_EQ(desk({"bench"}).exit, 2);
    EXPECT_EQ(desk({"bench", "--most", "2"}).exit, 2);
}

}  // namespace spile
