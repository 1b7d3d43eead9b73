#include "core/panel/flight_order.hpp"
#include "core/panel/line.hpp"

#include <gtest/gtest.h>
#include <limits>

namespace spile::panel {

namespace {

using Order = std::vector<std::size_t>;
constexpr auto clean = Soundness::Clean;
constexpr auto suspect = Soundness::Suspect;
constexpr auto sour = Soundness::Sour;

}  // namespace

TEST(Line, RunsFromZeroToTenInEightEqualSteps)
{
    EXPECT_EQ(lineOf(1), 0);
    EXPECT_EQ(lineOf(2), 1.25);
    EXPECT_EQ(lineOf(5), 5);
    EXPECT_EQ(lineOf(9), 10);
    EXPECT_EQ(lineLength, 10);
    for (int score = 1; score <= 9; ++score) {
        EXPECT_EQ(isEnd(score), score == 1 || score == 9) << score;
    }
}

TEST(DrawOrder, PutsCleanBarrelsFirstAndSourOnesLast)
{
    const std::vector<Soundness> barrels{sour, clean, suspect, clean, sour, suspect};
    EXPECT_EQ(drawOrder(barrels), (Order{1, 3, 2, 5, 0, 4}));
    EXPECT_TRUE(drawOrder({}).empty());
}

// The Williams square for four: 0 1 3 2 / 1 2 0 3 / 2 3 1 0 / 3 0 2 1.
TEST(GlassOrder, GivesEachTasterARowOfTheDesign)
{
    const std::vector<Soundness> glasses(4, clean);
    EXPECT_EQ(glassOrder(glasses, 0, 0), (Order{0, 1, 3, 2}));
    EXPECT_EQ(glassOrder(glasses, 0, 1), (Order{1, 2, 0, 3}));
    EXPECT_EQ(glassOrder(glasses, 0, 2), (Order{2, 3, 1, 0}));
    EXPECT_EQ(glassOrder(glasses, 1, 2), (Order{3, 0, 2, 1}));
    EXPECT_EQ(glassOrder(glasses, 2, 2), (Order{0, 1, 3, 2}));
}

TEST(GlassOrder, KeepsSuspectAndSourGlassesForTheEnd)
{
    const std::vector<Soundness> glasses{sour, clean, clean, suspect, clean, clean};
    EXPECT_EQ(glassOrder(glasses, 0, 0), (Order{1, 2, 5, 4, 0, 3}));
    EXPECT_EQ(glassOrder(glasses, 0, 1), (Order{2, 4, 1, 5, 3, 0}));
}

TEST(GlassOrder, KnowsSmallAndEndlessFlights)
{
    EXPECT_TRUE(glassOrder({}, 3, 1).empty());
    EXPECT_EQ(glassOrder(std::vector{sour}, 3, 1), Order{0});
    constexpr int most = std::numeric_limits<int>::max();
    EXPECT_EQ(glassOrder(std::vector(3, clean), most, most).size(), 3U);
    EXPECT_EQ(glassOrder(std::vector(3, clean), -most - 1, -most - 1).size(), 3U);
}

}  // namespace spile::panel
