// What finished barrels, taps and temperatures teach, without records.
#include "core/outlook/aging.hpp"
#include "core/outlook/learning.hpp"
#include "core/outlook/teaching.hpp"
#include "core/outlook/usual_priors.hpp"
#include "core/wood/effective_age.hpp"
#include "tests/support/simulated_barrels.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace spile::outlook {

namespace {

using std::chrono::days;

std::vector<Shown> shownOf(double end, int count)
{
    return std::vector<Shown>(static_cast<std::size_t>(count),
                              Shown{{0, 0.3}, {end, 0.4}, {0.1, 0.3}});
}

const Instant filled = *fromIso("2025-03-01T10:00Z");

}  // namespace

// Property 26 of the list that the tests of the outlook follow.
TEST(Learning, NoBarrelsTeachNothing)
{
    const CoursePrior usual = usualPrior("oak", {});
    const Lesson first = firstLesson(usual);
    const Lesson same = taught(first, {});
    EXPECT_EQ(same.end.mean, first.end.mean);
    EXPECT_EQ(same.end.deviation, first.end.deviation);
    const CoursePrior prior = applied(usual, first);
    EXPECT_DOUBLE_EQ(prior.end.mean, usual.end.mean);
    EXPECT_DOUBLE_EQ(prior.logRate.mean, usual.logRate.mean);
    EXPECT_DOUBLE_EQ(prior.slopePerYear.mean, usual.slopePerYear.mean);
    EXPECT_EQ(prior.weight, usual.weight);
}

TEST(Learning, BarrelsPullThePriorTheirWayAndTheMoreTheFurther)
{
    const Lesson first = firstLesson(usualPrior("oak", {}));
    double last = 0;
    for (const int count : {1, 3, 10, 100}) {
        const Lesson lesson = taught(first, shownOf(2, count));
        EXPECT_GT(lesson.end.mean, last);
        EXPECT_LT(lesson.end.mean, 2);
        EXPECT_GT(lesson.end.deviation, 0);
        last = lesson.end.mean;
    }
    EXPECT_NEAR(last, 2, 0.1);
    EXPECT_LT(taught(first, shownOf(2, 100)).end.deviation, first.end.deviation);
}

TEST(Learning, TheOrderOfTheBarrelsDoesNotMatter)
{
    const Lesson first = firstLesson(usualPrior("oak", {}));
    std::vector<Shown> shown = {{{0, 1}, {1, 0.2}, {0, 1}},
                                {{1, 1}, {-2, 0.9}, {0.3, 0.1}},
                                {{-1, 0.5}, {0.5, 0.5}, {-0.2, 0.4}}};
    const Lesson one = taught(first, shown);
    std::reverse(shown.begin(), shown.end());
    const Lesson other = taught(first, shown);
    EXPECT_NEAR(one.end.mean, other.end.mean, 1e-12);
    EXPECT_NEAR(one.end.deviation, other.end.deviation, 1e-12);
    EXPECT_NEAR(one.logRate.mean, other.logRate.mean, 1e-12);
}

// Three finished barrels halve the error where the usual prior is wrong: simulated.
TEST(Learning, AWrongPriorIsMendedByAFewFinishedBarrels)
{
    const CoursePrior usual = priorBetween(1, 6, 0.12);
    double before = 0;
    double after = 0;
    test::Draws draws(5);
    for (int cellar = 0; cellar < 10; ++cellar) {
        const auto barrel = [&](int sessions) {
            const double end = draws.normal(8.5, 0.7);
            return test::drawBarrel(
                [end](double age) { return 1 + (end - 1) * (1 - std::exp(-0.2 * age)); }, 2,
                sessions, draws);
        };
        test::SimulatedBarrel next = barrel(0);
        Lesson lesson = firstLesson(usual);
        const auto model = [&] {
            CourseModel made = test::modelFor(2);
            made.prior = applied(usual, lesson);
            return made;
        };
        const double level = next.level(9);
        before += std::abs(Course(model(), next.data).levelAt(9).mean() - level);
        std::vector<test::SimulatedBarrel> finished;
        for (int i = 0; i < 5; ++i) {
            finished.push_back(barrel(5));
        }
        for (int round = 0; round < 8; ++round) {
            std::vector<Shown> shown;
            for (const auto& one : finished) {
                shown.push_back(shownBy(Course(model(), one.data), usual));
            }
            lesson = taught(firstLesson(usual), shown);
        }
        after += std::abs(Course(model(), next.data).levelAt(9).mean() - level);
    }
    EXPECT_LT(after, 0.6 * before);
}

TEST(Teaching, ARightAloneGivesAWideWindowAroundIt)
{
    const std::vector<Wished> one = {{Wish::Right, 4, 0.4}};
    const auto window = windowTaughtBy(one);
    ASSERT_TRUE(window);
    EXPECT_LT(window->window.low, 4);
    EXPECT_GT(window->window.high, 4);
    EXPECT_GT(window->window.high - window->window.low, 2);
    EXPECT_EQ(window->wishes, 1);
}

TEST(Teaching, OneTapOfMoreIsNotEnough)
{
    const std::vector<Wished> one = {{Wish::More, 4, 0.4}};
    EXPECT_FALSE(windowTaughtBy(one));
    EXPECT_FALSE(windowTaughtBy({}));
}

TEST(Teaching, EdgesAreFoundBetweenTheAnswers)
{
    std::vector<Wished> wishes;
    for (int i = 0; i < 8; ++i) {
        wishes.push_back({Wish::More, 2.5, 0.3});
        wishes.push_back({Wish::Right, 4.5, 0.3});
        wishes.push_back({Wish::Right, 6, 0.3});
        wishes.push_back({Wish::TooMuch, 8, 0.3});
    }
    const auto window = windowTaughtBy(wishes);
    ASSERT_TRUE(window);
    EXPECT_NEAR(window->window.low, 3.4, 0.7);
    EXPECT_NEAR(window->window.high, 7.1, 0.7);
}

TEST(UsualPriors, LaterFillsGiveLessAndSlower)
{
    const CoursePrior first = usualPrior("vanilla", {1, "bourbon", {}, litres(200)});
    const CoursePrior third = usualPrior("vanilla", {3, "bourbon", {}, litres(200)});
    EXPECT_NEAR(third.end.mean - third.start.mean, 0.35 * (first.end.mean - first.start.mean),
                1e-12);
    EXPECT_NEAR(std::exp(third.logRate.mean - first.logRate.mean), 0.8, 1e-12);
    const CoursePrior roast = usualPrior("roast", {3, "bourbon", {}, litres(200)});
    EXPECT_EQ(roast.end.mean, usualPrior("roast", {}).end.mean);
}

TEST(UsualPriors, ASmallBarrelGivesFasterAndCharAndSpiritShiftTheEnd)
{
    EXPECT_GT(usualPrior("oak", {1, "", {}, litres(20)}).logRate.mean,
              usualPrior("oak", {1, "", {}, litres(200)}).logRate.mean);
    EXPECT_GT(usualPrior("vanilla", {1, "", 4, {}}).end.mean,
              usualPrior("vanilla", {1, "", 1, {}}).end.mean);
    EXPECT_GT(usualPrior("dried fruit", {1, "rum", {}, {}}).end.mean,
              usualPrior("dried fruit", {1, "bourbon", {}, {}}).end.mean);
}

TEST(Aging, IsTheCalendarAtTheReferenceTemperature)
{
    const Aging aging(filled, std::vector<Temperature>(400, wood::referenceTemperature));
    EXPECT_EQ(aging.ageAt(filled - days(3)), 0);
    EXPECT_NEAR(aging.ageAt(filled + days(100)), 100 / wood::daysOfMonth, 1e-12);
    EXPECT_NEAR(aging.ageAt(filled + days(1000)), 1000 / wood::daysOfMonth, 1e-9);
}

TEST(Aging, CountsWarmDaysTwiceForTenKelvinsMore)
{
    std::vector<Temperature> warmed(200, celsius(25));
    std::fill(warmed.begin(), warmed.begin() + 100, celsius(15));
    const Aging aging(filled, warmed);
    EXPECT_NEAR(aging.ageAt(filled + days(150)), (100 + 2 * 50) / wood::daysOfMonth, 1e-9);
    EXPECT_NEAR(aging.ageAt(filled + days(100) + std::chrono::hours(12)),
                (100 + 1) / wood::daysOfMonth, 1e-9);
}

}  // namespace spile::outlook
