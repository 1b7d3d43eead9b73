// The outlook as it comes out of the records.
#include "tests/support/outlook_cellar.hpp"

#include "core/cellar/acts/tending.hpp"
#include "core/cellar/acts/windows.hpp"
#include "core/outlook/barrel_outlook.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::outlook {

namespace {

using std::chrono::days;
using std::chrono::weeks;
using support::OutlookCellar;
using support::textOf;

class FromRecords : public ::testing::Test {
protected:
    CellarModel model()
    {
        auto learned = CellarModel::learn(world.cellar->database(), world.now(), Job());
        EXPECT_TRUE(learned) << (learned ? "" : textOf(learned.error()));
        return learned.value_or(CellarModel());
    }
    BarrelOutlook outlook(const SubjectId& barrel, const WhatIf& change = {})
    {
        auto made = outlookIf(world.cellar->database(), model(), barrel, world.now(), change);
        EXPECT_TRUE(made) << (made ? "" : textOf(made.error()));
        return made.value_or(BarrelOutlook());
    }
    void wantVanilla(int low, int high)
    {
        ASSERT_TRUE(cellar::setWindows(*world.cellar, world.own.batch, {{"vanilla", low, high}}));
    }
    // Sittings of one taster a month apart, the first after `after` days.
    void tasteMonthly(const SubjectId& barrel, int after, const std::vector<int>& vanilla)
    {
        world.pass(days(after));
        for (const int score : vanilla) {
            world.taste(barrel, {{"vanilla", score}});
            world.pass(days(30));
        }
    }

    OutlookCellar world;
};

const AttributeOutlook& only(const BarrelOutlook& outlook)
{
    EXPECT_EQ(outlook.attributes.size(), 1U);
    return outlook.attributes.front();
}

}  // namespace

TEST_F(FromRecords, WithoutScoresAndWindowsTheHabitIsKept)
{
    const SubjectId barrel = world.filledBarrel();
    const BarrelOutlook made = outlook(barrel);
    EXPECT_EQ(made.advice, Advice::NoWindows);
    EXPECT_TRUE(made.attributes.empty());
    EXPECT_EQ(made.next.reason, TastingReason::Habit);
    EXPECT_EQ(made.next.at, made.filled + days(182));
}

TEST_F(FromRecords, AWindowAloneGivesAWideOutlookFromWhatIsUsual)
{
    wantVanilla(4, 6);
    const BarrelOutlook made = outlook(world.filledBarrel());
    EXPECT_EQ(made.advice, Advice::Wait);
    EXPECT_EQ(only(made).source, WindowSource::ByHand);
    EXPECT_EQ(only(made).priorShare, 1);
    EXPECT_LT(made.chanceNow, 0.05);
    EXPECT_GT(made.bestChance, 0.3);
    EXPECT_LT(made.bestChance, 0.9);
    EXPECT_GE(made.next.at, made.filled + weeks(13));
    EXPECT_LE(made.next.at, made.filled + weeks(43));
    EXPECT_EQ(made.weakest, "vanilla");
    for (const LevelPoint& point : only(made).course) {
        EXPECT_LE(point.low, point.middle);
        EXPECT_LE(point.middle, point.high);
        EXPECT_GE(point.low, 0);
        EXPECT_LE(point.high, 10);
    }
}

TEST_F(FromRecords, TastingsNarrowItAndSayWhenToPull)
{
    wantVanilla(5, 7);
    const SubjectId barrel = world.filledBarrel();
    tasteMonthly(barrel, 180, {4, 5, 5, 6, 6});
    const BarrelOutlook made = outlook(barrel);
    EXPECT_LT(only(made).priorShare, 0.5);
    EXPECT_EQ(only(made).scores.size(), 5U);
    EXPECT_EQ(made.advice, Advice::Pull);
    EXPECT_GT(made.chanceNow, 0.7);
    // One taster out of hundreds never gave a wild score: nothing is doubted.
    EXPECT_FALSE(only(made).doubtfulScore);
}

TEST_F(FromRecords, AScoreThatDoesNotFitIsNamedAndNotLost)
{
    wantVanilla(5, 7);
    const SubjectId barrel = world.filledBarrel();
    world.pass(days(150));
    EntryId odd{};
    const std::vector<int> scores = {6, 6, 6, 6, 6, 2, 6, 6};
    for (const int score : scores) {
        const EntryId taste = world.taste(barrel, {{"vanilla", score}});
        odd = score == 2 ? taste : odd;
        world.pass(days(30));
    }
    const AttributeOutlook made = only(outlook(barrel));
    ASSERT_TRUE(made.doubtfulScore);
    EXPECT_EQ(*made.doubtfulScore, odd);
    EXPECT_GT(made.doubt, 0.5);
    EXPECT_EQ(made.scores.size(), scores.size());
}

TEST_F(FromRecords, DirectionsTeachAWindowForTheBeerInAllItsBarrels)
{
    const SubjectId one = world.filledBarrel();
    const SubjectId other = world.filledBarrel();
    world.pass(days(150));
    for (const auto& [score, wish] :
         std::vector<std::pair<int, cellar::Direction>>{{2, cellar::Direction::More},
                                                        {4, cellar::Direction::More},
                                                        {6, cellar::Direction::Right},
                                                        {6, cellar::Direction::Right}}) {
        world.wish(one, world.taste(one, {{"vanilla", score}}), "vanilla", wish);
        world.pass(days(40));
    }
    for (const SubjectId& barrel : {one, other}) {
        const AttributeOutlook made = only(outlook(barrel));
        EXPECT_EQ(made.source, WindowSource::Taught);
        EXPECT_EQ(made.directions, 4);
        ASSERT_TRUE(made.window);
        EXPECT_GT(made.window->low, 2.5);
        EXPECT_LT(made.window->low, 6);
        EXPECT_GT(made.window->high, 6);
    }
    wantVanilla(3, 4);
    EXPECT_EQ(only(outlook(one)).source, WindowSource::ByHand);
    EXPECT_NEAR(only(outlook(one)).window->low, 1.875, 1e-9);
}

TEST_F(FromRecords, AWarmerPlaceIsSooner)
{
    wantVanilla(5, 9);
    const SubjectId barrel = world.filledBarrel();
    tasteMonthly(barrel, 100, {2, 2});
    WhatIf warm;
    warm.temperature = celsius(25);
    WhatIf cool;
    cool.temperature = celsius(5);
    const auto entry = [&](const WhatIf& change) {
        return only(outlook(barrel, change)).entryMiddle;
    };
    ASSERT_TRUE(entry(warm));
    ASSERT_TRUE(entry({}));
    EXPECT_LT(*entry(warm), *entry({}));
    EXPECT_TRUE(!entry(cool) || *entry(cool) > *entry({}));
}

TEST_F(FromRecords, ATopUpThinsAndMixingTakesTheOthersLevel)
{
    wantVanilla(6, 9);
    const SubjectId strong = world.filledBarrel();
    const SubjectId weak = world.filledBarrel();
    world.pass(days(200));
    for (int i = 0; i < 4; ++i) {
        world.taste(strong, {{"vanilla", 7}});
        world.taste(weak, {{"vanilla", 2}});
        world.pass(days(20));
    }
    const double before = outlook(strong).chanceNow;
    WhatIf thin;
    thin.replacedFraction = 0.5;
    WhatIf mixed;
    mixed.blendedWith = weak;
    mixed.blendedShare = 0.5;
    const auto soon = [&](const WhatIf& change) {
        return outlook(strong, change).chances[1].within;
    };
    EXPECT_LT(soon(thin), before - 0.2);
    EXPECT_LT(soon(mixed), before - 0.1);
    WhatIf wrong;
    wrong.replacedFraction = 1.5;
    const auto refused = outlookIf(world.cellar->database(), model(), strong, world.now(), wrong);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
}

TEST_F(FromRecords, FinishedBarrelsTeachTheNextOnes)
{
    wantVanilla(5, 9);
    const SubjectId first = world.filledBarrel();
    const double before = only(outlook(first)).course.back().middle;
    for (int barrel = 0; barrel < 4; ++barrel) {
        const SubjectId finished = world.filledBarrel();
        tasteMonthly(finished, 60, {6, 8, 8, 8});
        ASSERT_TRUE(cellar::recordEmpty(*world.cellar, {finished}));
    }
    const SubjectId next = world.filledBarrel();
    EXPECT_GT(only(outlook(next)).course.back().middle, before + 0.5);
}

TEST_F(FromRecords, AnEmptyOrUnknownBarrelHasNone)
{
    const auto unknown = outlookOf(world.cellar->database(), model(), SubjectId{}, world.now());
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code, ErrorCode::NotFound);
}

TEST_F(FromRecords, TheCalendarHoldsAllFilledBarrelsTheReadyOnesFirst)
{
    wantVanilla(5, 7);
    const SubjectId ready = world.filledBarrel();
    tasteMonthly(ready, 180, {5, 6, 6, 6});
    const SubjectId fresh = world.filledBarrel();
    const auto rows = calendarOf(world.cellar->database(), model(), world.now(), Job());
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 3U);
    EXPECT_EQ(rows->front().barrel, ready);
    const BarrelOutlook whole = outlook(ready);
    EXPECT_EQ(rows->front().chanceNow, whole.chanceNow);
    EXPECT_EQ(rows->front().next.at, whole.next.at);
    EXPECT_NE(std::find_if(rows->begin(), rows->end(),
                           [&](const CalendarRow& row) { return row.barrel == fresh; }),
              rows->end());
    CancelToken stop;
    stop.cancel();
    const auto stopped = calendarOf(world.cellar->database(), model(), world.now(), Job({}, &stop));
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, ErrorCode::Cancelled);
}

}  // namespace spile::outlook
