// The rule of when to taste and when to pull, on simulated barrels with assumed values. The bars
// are the project's own.
#include "tests/support/simulated_pulling.hpp"

#include <gtest/gtest.h>

namespace spile::test {

TEST(TastingRule, PullsInsideWideWindowsWithFewTastings)
{
    const PullingResult result = pullBarrels(wideWindows(), Policy::Rule, outlook::TastingRule{});
    EXPECT_GE(result.inside, 0.85);
    EXPECT_LE(result.tastings, 5);
}

TEST(TastingRule, PullsInsideWhenBarrelsAreFasterThanIsBelieved)
{
    PullingSetting setting = wideWindows();
    setting.trueRateRatio = 1.6;
    const PullingResult result = pullBarrels(setting, Policy::Rule, outlook::TastingRule{});
    EXPECT_GE(result.inside, 0.85);
}

}  // namespace spile::test
