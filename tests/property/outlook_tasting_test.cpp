// What must hold of the rule of when to taste next. Numbers: the project's list of properties.
#include "core/outlook/next_tasting.hpp"
#include "tests/property/outlook_cases.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::outlook {

namespace {

constexpr double weekMonths = 12.0 / 52;
constexpr std::size_t weeks = 60;

Foreseen foreseenOf(const Course& course, const LineWindow& window, bool rising, double now)
{
    Foreseen one;
    one.window = window;
    one.rising = rising;
    one.sittingVariance = course.noiseVariance() * (0.5 + 0.25);
    one.resize(weeks);
    for (std::size_t week = 0; week < weeks; ++week) {
        one.set(week, course.levelAt(now + weekMonths * static_cast<double>(week)));
    }
    return one;
}

// Up to three attributes of one barrel with windows of their own.
std::vector<Foreseen> anyForeseen()
{
    std::vector<Foreseen> all;
    const auto n = *rc::gen::inRange<std::size_t>(1, 4);
    for (std::size_t i = 0; i < n; ++i) {
        const Case one = anyCase();
        const double low = anyNumber(2, 6);
        all.push_back(foreseenOf(Course(one.model, one.data), {low, low + anyNumber(1, 4)},
                                 *rc::gen::inRange(0, 4) > 0, one.age));
    }
    return all;
}

TastingRule anyRule()
{
    TastingRule rule;
    rule.decides = anyNumber(0.1, 0.9);
    rule.mayPass = anyNumber(0.01, 0.2);
    rule.leastWeeks = *rc::gen::inRange<std::size_t>(1, 6);
    rule.mostWeeks = rule.leastWeeks + *rc::gen::inRange<std::size_t>(0, 30);
    return rule;
}

bool isSame(const Decision& a, const Decision& b)
{
    return a.pull == b.pull && a.pastSaving == b.pastSaving && a.enough == b.enough &&
           a.week == b.week && a.decides == b.decides && a.why == b.why;
}

}  // namespace

RC_GTEST_PROP(Property27, TheNextTastingLiesBetweenItsGapsAlways, ())
{
    const std::vector<Foreseen> all = anyForeseen();
    const TastingRule rule = anyRule();
    const Decision decision = decide(all, rule);
    RC_ASSERT(decision.week >= rule.leastWeeks);
    RC_ASSERT(decision.week <= rule.mostWeeks);
    RC_ASSERT(isSame(decision, decide(all, rule)));
}

RC_GTEST_PROP(Property28, WhoAsksForMoreTastesNoEarlier, ())
{
    const std::vector<Foreseen> all = anyForeseen();
    const TastingRule rule = anyRule();
    TastingRule asking = rule;
    asking.decides += anyNumber(0, 0.5);
    RC_ASSERT(decide(all, asking).week >= decide(all, rule).week);
}

// The smaller the risk that may be run, the sooner.
RC_GTEST_PROP(Property28, WhoRisksLessTastesNoLater, ())
{
    const std::vector<Foreseen> all = anyForeseen();
    const TastingRule rule = anyRule();
    TastingRule careful = rule;
    careful.mayPass *= anyNumber(0, 1);
    RC_ASSERT(decide(all, careful).week <= decide(all, rule).week);
}

RC_GTEST_PROP(Property29, WhatIsSureEnoughIsPulled, ())
{
    const std::vector<Foreseen> all = anyForeseen();
    TastingRule rule = anyRule();
    double now = 1;
    for (const Foreseen& one : all) {
        now *= one.standing.front().sides.within;
    }
    rule.enough = now * anyNumber(0, 1);
    RC_ASSERT(decide(all, rule).pull);
}

// Fewer doubts about the mean of a sitting, as with more tasters: a level that is not in its window
// yet is the likelier to be found in it. The rule does not show the spread itself.
RC_GTEST_PROP(Property30, MoreTastersNeverTellLess, ())
{
    Foreseen one;
    const double low = anyNumber(3, 7);
    one.window = {low, lineHigh};
    one.mean = {low - anyNumber(0, 3)};
    one.variance = {anyNumber(0.05, 4)};
    one.sittingVariance = anyNumber(0.1, 2);
    const double enough = anyNumber(0.5, 0.95);
    const double before = chanceToDecide({&one, 1}, 0, enough);
    one.sittingVariance *= anyNumber(0.1, 1);
    RC_ASSERT(chanceToDecide({&one, 1}, 0, enough) >= before);
}

// The rule knows no dates, only weeks from now. A straight line of known slope that is filled and
// tasted later is as much later where it was.
RC_GTEST_PROP(Property31, DatesThatAllMoveMoveTheTasting, ())
{
    Case one = anyCase();
    one.model = single(one.model, Family::Linear);
    one.model.prior.slopePerYear = {anyNumber(1, 5), 1e-9};
    const LineWindow window{4, 6.5};
    const double later = anyNumber(0, 12);
    Case other = one;
    other.model.prior.linearStart.mean -= later / 12 * one.model.prior.slopePerYear.mean;
    for (Scored& score : other.data.scores) {
        score.age += later;
    }
    const Foreseen first = foreseenOf(Course(one.model, one.data), window, true, one.age);
    const Foreseen second =
        foreseenOf(Course(other.model, other.data), window, true, other.age + later);
    const TastingRule rule;
    const Decision now = decide({&first, 1}, rule);
    const Decision then = decide({&second, 1}, rule);
    RC_ASSERT(now.pull == then.pull);
    RC_ASSERT(now.week == then.week);
}

RC_GTEST_PROP(Property32, WhatIsPastItsWindowIsNotScheduledForEver, ())
{
    std::vector<Foreseen> all = anyForeseen();
    Foreseen& gone = all.front();
    const bool rising = *rc::gen::arbitrary<bool>();
    gone.rising = rising;
    gone.window = {4, 6};
    for (std::size_t week = 0; week < weeks; ++week) {
        gone.set(week, {{{1, rising ? 8.0 : 2.0, anyNumber(0.1, 1)}}});
    }
    const Decision decision = decide(all, TastingRule{});
    RC_ASSERT(decision.pastSaving);
    RC_ASSERT(decision.pull);
}

}  // namespace spile::outlook
