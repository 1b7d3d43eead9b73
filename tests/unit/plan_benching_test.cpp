// The bench with the barrels of a cellar.
#include "core/cellar/acts/tending.hpp"
#include "core/plan/benching.hpp"
#include "tests/support/outlook_cellar.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::plan {

using support::OutlookCellar;

namespace {

class Benching : public testing::Test {
protected:
    OutlookCellar world;

    SubjectId barrel(int oak, int vanilla, double strength = 0.11)
    {
        const SubjectId made = world.filledBarrel();
        world.pass(std::chrono::hours(1));
        cellar::NewReading reading;
        reading.barrel = made;
        reading.specificGravity = 1.020;
        reading.alcoholByVolume = strength;
        EXPECT_TRUE(cellar::recordReading(*world.cellar, reading));
        for (int sitting = 0; sitting < 4; ++sitting) {
            world.pass(std::chrono::days(1));
            world.taste(made, {{"oak", oak}, {"vanilla", vanilla}});
        }
        return made;
    }
    Result<Bench> bench(const BenchAsk& ask)
    {
        return benchOf(world.cellar->database(), {}, ask, world.now(), {});
    }
};

BenchAsk middling()
{
    BenchAsk ask;
    ask.wishes = {{"oak", 4, 6}, {"vanilla", 4, 6}};
    return ask;
}

std::set<SubjectId> barrelsOf(const Bench& bench, const blend::Blend& blend)
{
    std::set<SubjectId> barrels;
    for (const blend::Share& share : blend.shares) {
        barrels.insert(bench.barrels[share.barrel].row.barrel);
    }
    return barrels;
}

}  // namespace

TEST_F(Benching, FindsTwoBarrelsThatMakeUpForEachOther)
{
    const SubjectId oaky = barrel(8, 2);
    const SubjectId sweet = barrel(2, 8);
    barrel(9, 9);
    BenchAsk ask = middling();
    ask.keptBack = {world.own.barrel};
    ask.barrelsMost = 2;
    const auto found = bench(ask);
    ASSERT_TRUE(found) << found.error().subject;
    EXPECT_EQ(found->barrels.size(), 3U);
    const auto blends = blendsOf(*found, {});
    ASSERT_TRUE(blends);
    ASSERT_FALSE(blends->blends.empty());
    EXPECT_TRUE(blends->proven);
    EXPECT_EQ(barrelsOf(*found, blends->blends[0]), (std::set<SubjectId>{oaky, sweet}));
    const auto mixed = mixedOf(*found, blends->blends[0]);
    ASSERT_TRUE(mixed);
    EXPECT_NEAR(mixed->volume.si() * 1e3, 390, 8);  // less what the wood drinks
    EXPECT_NEAR(mixed->alcoholByVolume, 0.11, 0.002);
}

TEST_F(Benching, LeavesOutWhatIsNotSoundKeptBackOrEmpty)
{
    const SubjectId sound = barrel(5, 5);
    const SubjectId kept = barrel(5, 5);
    const SubjectId sour = world.filledBarrel();
    world.taste(sour, {{"oak", 5}}, {{"vinegar", 3}});
    ASSERT_TRUE(cellar::registerBarrel(*world.cellar, {.mark = "Empty"}));
    BenchAsk ask = middling();
    ask.keptBack = {kept, world.own.barrel};
    const auto found = bench(ask);
    ASSERT_TRUE(found);
    ASSERT_EQ(found->barrels.size(), 1U);
    EXPECT_EQ(found->barrels[0].row.barrel, sound);
    ASSERT_EQ(found->leftOut.size(), 1U);
    EXPECT_EQ(found->leftOut[0].row.barrel, sour);
    EXPECT_EQ(found->leftOut[0].why, LeftOut::Why::Sour);
    ask.keptBack.insert(sound);
    const auto none = bench(ask);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().subject, "barrels");
}

TEST_F(Benching, KeepsTheTankAndTheStrengthByMass)
{
    barrel(5, 5, 0.10);
    barrel(5, 5, 0.14);
    BenchAsk ask = middling();
    ask.keptBack = {world.own.barrel};
    ask.strengthLeast = 0.115;
    ask.strengthMost = 0.125;
    const auto both = bench(ask);
    ASSERT_TRUE(both);
    const auto blends = blendsOf(*both, {});
    ASSERT_TRUE(blends);
    ASSERT_EQ(blends->blends.size(), 1U);
    EXPECT_EQ(blends->blends[0].shares.size(), 2U);
    ask.most = litres(200);
    const auto small = bench(ask);
    const auto none = blendsOf(*small, {});
    ASSERT_TRUE(none);
    EXPECT_TRUE(none->blends.empty());
    EXPECT_FALSE(none->inTheWay.empty());
}

TEST_F(Benching, KnowsLessOfABarrelThatWasNeverTasted)
{
    barrel(5, 5);
    const SubjectId unknown = world.filledBarrel();
    BenchAsk ask = middling();
    ask.keptBack = {world.own.barrel};
    const auto found = bench(ask);
    ASSERT_TRUE(found);
    ASSERT_EQ(found->barrels.size(), 2U);
    for (const BenchBarrel& one : found->barrels) {
        const bool isUnknown = one.row.barrel == unknown;
        EXPECT_EQ(one.levels[0].scores, isUnknown ? 0 : 4);
        EXPECT_EQ(one.levels[0].deviation < 1, !isUnknown);
    }
}

TEST_F(Benching, RefusesAWindowThatIsNoPartOfTheLadder)
{
    barrel(5, 5);
    BenchAsk ask;
    ask.wishes = {{"oak", 7, 4}};
    const auto found = bench(ask);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().subject, "window of oak");
}

}  // namespace spile::plan
