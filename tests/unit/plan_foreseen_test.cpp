// The outlooks of a cellar in short, as they are kept.
#include "core/cellar/acts/tasting.hpp"
#include "core/plan/foreseen.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>
#include <set>

namespace spile::plan {

TEST(Foreseen, HasAWordOfItsOwnForEachReasonAndAdvice)
{
    using outlook::Advice;
    using outlook::TastingReason;
    std::set<std::string> words;
    for (const auto reason :
         {TastingReason::Decides, TastingReason::BeforeTooFar, TastingReason::LooksAgain,
          TastingReason::Habit, TastingReason::AtOnce}) {
        words.insert(wordOf(reason));
    }
    EXPECT_EQ(words.size(), 5U);
    EXPECT_TRUE(words.contains(cellar::tastingReason::habit));
    for (const auto advice : {Advice::Wait, Advice::Pull, Advice::TooFar, Advice::NoWindows}) {
        words.insert(wordOf(advice));
    }
    EXPECT_EQ(words.size(), 9U);
}

TEST(Foreseen, SaysChancesInTenths)
{
    EXPECT_EQ(inTen(0), 0);
    EXPECT_EQ(inTen(0.049), 0);
    EXPECT_EQ(inTen(0.05), 1);
    EXPECT_EQ(inTen(0.72), 7);
    EXPECT_EQ(inTen(0.949), 9);
    EXPECT_EQ(inTen(0.96), 10);
    EXPECT_EQ(inTen(1), 10);
}

TEST(Foreseen, IsOfEachFullBarrelAsItsFactsAreNow)
{
    support::TestDevice device(95);
    const auto cellar = device.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    ASSERT_TRUE(cellar::registerBarrel(*cellar, {.mark = "Empty"}));
    device.clock.pass(std::chrono::days(200));
    ASSERT_TRUE(cellar::recordTaste(*cellar, {.barrel = small.barrel,
                                              .scores = {{"oak", 5}},
                                              .circumstance = {.person = small.person}}));
    const Instant now = device.clock.now();
    const auto kept = foreseenOf(cellar->database(), {}, now, {});
    ASSERT_TRUE(kept);
    ASSERT_EQ(kept->size(), 1U);
    const cellar::KeptOutlook& one = kept->front();
    EXPECT_EQ(one.barrel, small.barrel);
    EXPECT_EQ(one.fingerprint, cellar::outlookFingerprints(cellar->database())->at(small.barrel));
    EXPECT_EQ(one.made, now);
    EXPECT_EQ(one.advice, cellar::advice::noWindows);
    EXPECT_FALSE(one.best);
    EXPECT_GE(one.horizon, now);
    ASSERT_TRUE(cellar::keepOutlooks(*cellar, *kept));
    EXPECT_EQ(cellar::keptOutlook(cellar->database(), small.barrel).value(), one);
}

}  // namespace spile::plan
