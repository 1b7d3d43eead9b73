// What must hold of the chances of being in windows together, and of dates. Numbers: the project's
// list of properties.
#include "core/outlook/readiness.hpp"
#include "tests/property/outlook_cases.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <memory>
#include <rapidcheck/gtest.h>

namespace spile::outlook {

namespace {

std::vector<Standing> anyStandings()
{
    std::vector<Standing> standings(*rc::gen::inRange<std::size_t>(1, 8));
    for (Standing& one : standings) {
        const double below = anyNumber(0, 1);
        const double above = anyNumber(0, 1 - below);
        one = {{below, 1 - below - above, above}, 0};
    }
    return standings;
}

std::vector<double> agesFrom(double first)
{
    std::vector<double> ages(80);
    for (std::size_t i = 0; i < ages.size(); ++i) {
        ages[i] = first + 0.25 * static_cast<double>(i);
    }
    return ages;
}

}  // namespace

RC_GTEST_PROP(Property14, TheChanceOfAllLiesBetweenItsBounds, ())
{
    const std::vector<Standing> standings = anyStandings();
    const auto rising = std::make_unique<bool[]>(standings.size());
    for (std::size_t i = 0; i < standings.size(); ++i) {
        rising[i] = *rc::gen::arbitrary<bool>();
    }
    const Together all = together(standings, {rising.get(), standings.size()});
    double least = 1;
    double sum = 0;
    for (const Standing& one : standings) {
        least = std::min(least, one.sides.within);
        sum += one.sides.within;
    }
    RC_ASSERT(all.within <= least);
    RC_ASSERT(all.within >= sum - static_cast<double>(standings.size() - 1) - 1e-12);
    RC_ASSERT(standings[all.weakest].sides.within == least);
    RC_ASSERT(all.within <= all.entered + 1e-12);
    RC_ASSERT(all.within <= 1 - all.past + 1e-12);
}

// A straight line that surely rises, or falls: what is past a level stays past it.
RC_GTEST_PROP(Property15, EntryAndExitOnlyGrowOfWhatGoesOneWay, ())
{
    Case one = anyCase();
    const bool rises = *rc::gen::arbitrary<bool>();
    one.model.prior = only(one.model.prior, Family::Linear);
    one.model.prior.slopePerYear = {rises ? 3.0 : -3.0, 0.2};
    const Course course(one.model, one.data);
    const double low = anyNumber(2, 6);
    const double high = low + anyNumber(0.5, 3);
    double entered = 0;
    double left = 0;
    for (const double age : agesFrom(one.age)) {
        const Mixture::Sides sides = course.levelAt(age).sides(low, high);
        const double in = 1 - (rises ? sides.below : sides.above);
        const double out = rises ? sides.above : sides.below;
        RC_ASSERT(in >= entered - 1e-9);
        RC_ASSERT(out >= left - 1e-9);
        RC_ASSERT(in >= out - 1e-12);
        entered = in;
        left = out;
    }
}

RC_GTEST_PROP(Property15, ASurerEntryIsNoEarlier, ())
{
    const Case one = anyCase();
    const Course course(one.model, one.data);
    const std::vector<double> ages = agesFrom(one.age);
    std::vector<double> notThere;
    for (const double age : ages) {
        notThere.push_back(course.levelAt(age).below(4.5));
    }
    const double p = anyNumber(0.01, 0.9);
    const auto likely = entryAt(ages, notThere, p);
    const auto surer = entryAt(ages, notThere, p + 0.09);
    RC_ASSERT((!surer || (likely && *likely <= *surer)));
    const bool comes = std::any_of(notThere.begin(), notThere.end(),
                                   [&](double chance) { return 1 - chance >= p; });
    RC_ASSERT(likely.has_value() == comes);
    RC_ASSERT((1 - notThere.front() < p || *likely == ages.front()));
}

RC_GTEST_PROP(BestSpan, HoldsTheHighestAndNothingLow, ())
{
    std::vector<double> chances(*rc::gen::inRange<std::size_t>(1, 60));
    std::generate(chances.begin(), chances.end(), [] { return anyNumber(0, 1); });
    const double share = anyNumber(0.3, 1);
    const Span span = bestSpan(chances, share);
    RC_ASSERT(span.from <= span.best && span.best <= span.to && span.to < chances.size());
    const double best = *std::max_element(chances.begin(), chances.end());
    RC_ASSERT(chances[span.best] == best);
    for (std::size_t i = span.from; i <= span.to; ++i) {
        RC_ASSERT(chances[i] >= share * best);
    }
    RC_ASSERT((span.from == 0 || chances[span.from - 1] < share * best));
    RC_ASSERT((span.to + 1 == chances.size() || chances[span.to + 1] < share * best));
}

RC_GTEST_PROP(WindowOfScores, HoldsItsScoresAndNotTheNext, ())
{
    const int low = *rc::gen::inRange(panel::lowestScore, panel::highestScore + 1);
    const int high = *rc::gen::inRange(low, panel::highestScore + 1);
    const LineWindow window = windowOfScores(low, high);
    for (int score = panel::lowestScore; score <= panel::highestScore; ++score) {
        const double line = panel::lineOf(score);
        const bool inside = line >= window.low && line <= window.high;
        RC_ASSERT(inside == (score >= low && score <= high));
    }
    RC_ASSERT((low > panel::lowestScore || window.low == lineLow));
    RC_ASSERT((high < panel::highestScore || window.high == lineHigh));
}

}  // namespace spile::outlook
