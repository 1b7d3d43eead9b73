#include "core/cellar/standing.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

const Instant now = *fromIso("2026-03-14T10:00Z");
constexpr Milliseconds instant{1};
constexpr auto week = std::chrono::days(7);

BarrelRow dueAt(Instant due, const std::string& verdict = {})
{
    BarrelRow row;
    row.filled = true;
    row.due = due;
    row.verdict = verdict;
    return row;
}

Standing standing(Instant due, const std::string& verdict = {})
{
    return standingOf(dueAt(due, verdict), now);
}

}  // namespace

TEST(StandingOf, ABarrelChangesAtEachBoundaryToTheMillisecond)
{
    EXPECT_EQ(standing(now + week + instant), Standing::Resting);
    EXPECT_EQ(standing(now + week), Standing::Soon);
    EXPECT_EQ(standing(now + instant), Standing::Soon);
    EXPECT_EQ(standing(now), Standing::Due);
    EXPECT_EQ(standing(now - week), Standing::Due);
    EXPECT_EQ(standing(now - week - instant), Standing::Overdue);
}

TEST(StandingOf, ABarrelOnHoldIsHeldUntilItIsDue)
{
    EXPECT_EQ(standing(now + week + instant, "hold"), Standing::Held);
    EXPECT_EQ(standing(now + instant, "hold"), Standing::Held);
    EXPECT_EQ(standing(now, "hold"), Standing::Due);
    EXPECT_EQ(standing(now - week - instant, "hold"), Standing::Overdue);
    EXPECT_EQ(standing(now + instant, "top up"), Standing::Soon);
}

TEST(StandingOf, ABarrelWithNothingDueIsResting)
{
    BarrelRow row;
    EXPECT_EQ(standingOf(row, now), Standing::Resting);
    row.verdict = "hold";
    EXPECT_EQ(standingOf(row, now), Standing::Resting);  // empty: there is nothing to hold
    row.filled = true;
    EXPECT_EQ(standingOf(row, now), Standing::Held);
}

}  // namespace spile::cellar
