#pragma once

#include "core/outlook/course.hpp"
#include "tests/support/simulated_barrels.hpp"

#include <cmath>
#include <rapidcheck.h>

/// Drawn barrels for the property tests of the outlook, and the same posterior by another way.
namespace spile::outlook {

/// A barrel drawn from the model's prior, and what it is looked at with.
struct Case {
    CourseModel model;
    CourseData data;
    double age = 0;  // a little after the last sitting
};

inline Case anyCase(int mostTasters = 4, int leastSittings = 0)
{
    test::Draws draws(*rc::gen::inRange<std::uint64_t>(1, 1'000'000'000));
    const int tasters = draws.whole(1, mostTasters);
    Case made{test::modelFor(static_cast<std::size_t>(tasters)), {}, 0};
    const test::SimulatedBarrel barrel =
        test::drawBarrel(test::drawFromPrior(made.model.prior, draws), tasters,
                         draws.whole(leastSittings, 7), draws);
    made.data = barrel.data;
    made.age = barrel.lastAge + draws.uniform(0, 9);
    for (double& scatter : made.model.tasters.scatter) {
        scatter = draws.uniform(0.7, 1.5);
    }
    return made;
}

inline double anyNumber(double low, double high)
{
    return low + (high - low) * *rc::gen::inRange(0, 1'000'001) / 1e6;
}

/// Brings scores to the line's ends, so that some of them mean "there or beyond".
inline void cutAtEnds(CourseData& data, double low, double high)
{
    for (Scored& score : data.scores) {
        score.cut = true;
        score.line = score.line < low ? lineLow : score.line > high ? lineHigh : score.line;
    }
}

inline bool near(double a, double b, double within) { return std::fabs(a - b) <= within; }

/// Whether two courses say the same of a level: mean, variance, chances, evidence.
inline bool sayTheSame(const Course& a, double ageA, const Course& b, double ageB, double within)
{
    const Mixture first = a.levelAt(ageA);
    const Mixture second = b.levelAt(ageB);
    return near(first.mean(), second.mean(), within) &&
           near(first.variance(), second.variance(), within) &&
           near(first.below(4), second.below(4), within) &&
           near(first.within(3, 6), second.within(3, 6), within) &&
           near(a.logEvidence(), b.logEvidence(), within);
}
inline bool sayTheSame(const Course& a, const Course& b, double age, double within)
{
    return sayTheSame(a, age, b, age, within);
}

inline CoursePrior only(CoursePrior prior, Family family)
{
    prior.weight = {};
    prior.weight.at(static_cast<std::size_t>(family)) = 1;
    return prior;
}

/// One shape and one noise: a single normal distribution.
inline CourseModel single(CourseModel model, Family family = Family::Saturating)
{
    model.prior = only(model.prior, family);
    model.grid.ratePoints = 1;
    model.grid.noisePoints = 1;
    return model;
}

}  // namespace spile::outlook
