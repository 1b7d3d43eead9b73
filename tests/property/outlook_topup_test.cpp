// Top-ups, effective age and scores at the ends of the line. Numbers: the project's list of
// properties.
#include "core/outlook/normal.hpp"
#include "core/wood/effective_age.hpp"
#include "tests/property/outlook_cases.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::outlook {

namespace {

constexpr double instant = 1e-9;

struct Poured {
    Shape shape;
    bool recovers = false;
    double first = 0, second = 0;  // the amounts
    double age = 0;                // of the top-up

    [[nodiscard]] double level(const std::vector<Replaced>& replaced, double added, double at) const
    {
        const auto row = courseRow(shape, recovers, replaced, at);
        return row[0] * first + row[1] * second + row[2] * added;
    }
};

Poured anyPoured()
{
    const std::vector<Shape> shapes = shapesOf(CoursePrior{}, CourseGrid{});
    Poured made;
    made.shape = shapes[*rc::gen::inRange<std::size_t>(0, shapes.size())];
    made.recovers = *rc::gen::arbitrary<bool>();
    made.first = anyNumber(0, 6);
    made.second = anyNumber(0, 9);
    made.age = anyNumber(1, 20);
    return made;
}

}  // namespace

RC_GTEST_PROP(Property19, AtTheReferenceTemperatureAgeIsTime, ())
{
    const std::vector<Temperature> days(*rc::gen::inRange<std::size_t>(1, 900),
                                        wood::referenceTemperature);
    std::vector<double> ages(days.size());
    wood::effectiveAges(days, ages, anyNumber(1, 4));
    for (std::size_t i = 0; i < ages.size(); ++i) {
        RC_ASSERT(near(ages[i], static_cast<double>(i + 1) / wood::daysOfMonth, 1e-9));
    }
}

// Days are the finest that the function knows: a span is split between two of them.
RC_GTEST_PROP(Property19, AgesGrowAndSpansMayBeSplit, ())
{
    std::vector<Temperature> days(*rc::gen::inRange<std::size_t>(2, 400), celsius(0));
    std::generate(days.begin(), days.end(), [] { return celsius(anyNumber(-10, 40)); });
    std::vector<double> ages(days.size());
    wood::effectiveAges(days, ages);
    RC_ASSERT(ages.front() > 0);
    RC_ASSERT(std::adjacent_find(ages.begin(), ages.end(), std::greater_equal<>()) == ages.end());
    const auto split = *rc::gen::inRange<std::size_t>(1, days.size());
    std::vector<double> rest(days.size() - split);
    wood::effectiveAges({days.data() + split, rest.size()}, rest);
    RC_ASSERT(near(ages[split - 1] + rest.back(), ages.back(), 1e-9));
}

RC_GTEST_PROP(Property20, ATopUpOfNothingIsNone, ())
{
    const Poured beer = anyPoured();
    const double age = anyNumber(0, 30);
    RC_ASSERT(
        near(beer.level({{beer.age, 0}}, anyNumber(0, 9), age), beer.level({}, 0, age), 1e-12));
    Case one = anyCase();
    const Course without(one.model, one.data);
    one.data.replaced = {{7.5, 0}};
    RC_ASSERT(sayTheSame(Course(one.model, one.data), without, one.age, 1e-9));
}

RC_GTEST_PROP(Property20, BeerOfTheSameLevelLeavesTheLevel, ())
{
    const Poured beer = anyPoured();
    const double before = beer.level({}, 0, beer.age);
    const std::vector<Replaced> replaced = {{beer.age, anyNumber(0, 1)}};
    RC_ASSERT(near(beer.level(replaced, before, beer.age + instant), before, 1e-6));
}

RC_GTEST_PROP(Property20, TwoTopUpsAtOnceAreOne, ())
{
    const Poured beer = anyPoured();
    const double p = anyNumber(0, 1);
    const double q = anyNumber(0, 1);
    const double added = anyNumber(0, 9);
    const double later = beer.age + anyNumber(0.01, 20);
    RC_ASSERT(near(beer.level({{beer.age, p}, {beer.age, q}}, added, later),
                   beer.level({{beer.age, 1 - (1 - p) * (1 - q)}}, added, later), 1e-9));
}

RC_GTEST_PROP(Property20, ReplacingAllBeginsAgain, ())
{
    const Poured beer = anyPoured();
    const double added = anyNumber(0, 9);
    const std::vector<Replaced> all = {{beer.age, 1}};
    RC_ASSERT(near(beer.level(all, added, beer.age + instant), added, 1e-6));
    const double ahead = anyNumber(0, 20);
    if (beer.recovers && beer.shape.family == Family::Saturating) {  // as a fresh fill of it
        Poured fresh = beer;
        fresh.first = added;
        RC_ASSERT(near(beer.level(all, added, beer.age + ahead + instant),
                       fresh.level({}, 0, ahead), 1e-6));
    } else {  // what the wood would have given still comes
        RC_ASSERT(near(beer.level(all, added, beer.age + ahead + instant) - added,
                       beer.level({}, 0, beer.age + ahead) - beer.level({}, 0, beer.age), 1e-6));
    }
}

// The level of the added beer is one amount more, of which something is believed.
RC_GTEST_PROP(Property20, AddedBeerBringsItsOwnDoubt, ())
{
    const CourseModel model = single(test::modelFor(1), Family::Linear);
    CourseData data;
    data.replaced = {{6, anyNumber(0.1, 0.9)}};
    data.added = {anyNumber(0, 9), anyNumber(0.1, 3)};
    const Shape shape = shapesOf(model.prior, model.grid).front();
    const auto row = courseRow(shape, false, data.replaced, 9);
    double mean = row[2] * data.added.mean;
    double variance = std::pow(row[2] * data.added.deviation, 2) + test::biasVariance;
    for (std::size_t a = 0; a < 2; ++a) {
        mean += row.at(a) * shape.amounts.at(a).mean;
        variance += std::pow(row.at(a) * shape.amounts.at(a).deviation, 2);
    }
    const Course course(model, data);
    RC_ASSERT(near(course.levelAt(9).mean(), mean, 1e-9));
    RC_ASSERT(near(course.levelAt(9).variance(), variance, 1e-9));
    RC_ASSERT(near(course.logEvidence(), 0, 1e-9));
}

RC_GTEST_PROP(Property21, WithoutScoresAtTheEndsNothingIsCut, ())
{
    Case one = anyCase();
    for (Scored& score : one.data.scores) {
        score.line = std::clamp(score.line, lineLow + 0.01, lineHigh - 0.01);
    }
    const Course exact(one.model, one.data);
    for (Scored& score : one.data.scores) {
        score.cut = true;
    }
    RC_ASSERT(sayTheSame(exact, Course(one.model, one.data), one.age, 0));
}

// "There or beyond" moves the level as a score beyond would: mostly outwards, but what was tasted
// early may make the rest of the way smaller.
RC_GTEST_PROP(Property21, AtTheEndOrBeyondMovesAsBeyond, ())
{
    Case one = anyCase(4, 1);
    one.model = single(one.model);
    Scored& score = one.data.scores[*rc::gen::inRange<std::size_t>(0, one.data.scores.size())];
    const bool top = *rc::gen::arbitrary<bool>();
    const auto mean = [&] { return Course(one.model, one.data).levelAt(one.age).mean(); };
    score.line = top ? lineHigh + 1 : lineLow - 1;
    const double beyond = mean();
    score.line = top ? lineHigh : lineLow;
    const double exact = mean();
    score.cut = true;
    const double cut = mean();
    RC_ASSERT((cut - exact) * (beyond - exact) >= 0);
    if (one.data.scores.size() == 1) {
        RC_ASSERT((top ? cut - exact : exact - cut) >= 0);
    }
}

// One score at an end, one shape, one noise: by sums over the level that the score is of.
RC_GTEST_PROP(Property21, OneScoreAtAnEndAgreesWithQuadrature, ())
{
    CourseModel model = single(test::modelFor(1), Family::Linear);
    model.prior.linearStart = {anyNumber(1, 9), anyNumber(0.3, 2)};
    model.prior.slopePerYear = {0, 0.01};
    const bool top = *rc::gen::arbitrary<bool>();
    const double side = top ? 1 : -1;
    const double line = top ? lineHigh : lineLow;
    const Course course(model, {{{6, 0, 0, line}}, {}, {}});
    const Mixture prior = Course(model, {}).levelAt(6);
    const Mixture::Part before = prior.parts.front();
    const double noise = model.noise.median * std::sqrt(1 + std::pow(model.noise.sessionShare, 2));
    double chance = 0;
    double first = 0;
    double second = 0;
    constexpr double step = 0.005;
    for (double z = -10; z <= 10; z += step) {
        const double x = before.mean + z * before.deviation;
        const double weight = step * normalDensity(z) * normalBelow(side * (x - line) / noise);
        chance += weight;
        first += weight * x;
        second += weight * x * x;
    }
    const Mixture level = course.levelAt(6);
    RC_ASSERT(near(course.logEvidence(), std::log(chance), 1e-7));
    RC_ASSERT(near(level.mean(), first / chance, 1e-6));
    RC_ASSERT(near(level.variance(), second / chance - std::pow(first / chance, 2), 1e-6));
}

}  // namespace spile::outlook
