// What must hold of every mixture, and of the normal distribution below it. Numbers: the project's
// list of properties.
#include "core/outlook/mixture.hpp"
#include "core/outlook/normal.hpp"
#include "tests/property/outlook_cases.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::outlook {

namespace {

Mixture anyMixture()
{
    const auto n = *rc::gen::inRange<std::size_t>(1, 9);
    Mixture mixture;
    double sum = 0;
    for (std::size_t i = 0; i < n; ++i) {
        mixture.parts.push_back(
            {anyNumber(0.01, 1), anyNumber(-2, 12), std::exp(anyNumber(-3, 1.5))});
        sum += mixture.parts.back().weight;
    }
    for (Mixture::Part& part : mixture.parts) {
        part.weight /= sum;
    }
    return mixture;
}

}  // namespace

RC_GTEST_PROP(Property13, TheChanceOfLyingBelowGrows, ())
{
    const Mixture mixture = anyMixture();
    const double x = anyNumber(-3, 13);
    RC_ASSERT(mixture.below(x) <= mixture.below(x + anyNumber(0, 3)));
    RC_ASSERT(mixture.below(-1e3) < 1e-12);
    RC_ASSERT(near(mixture.below(1e3), 1, 1e-12));
}

RC_GTEST_PROP(Property13, ChancesOfTheThreeSidesAddToOne, ())
{
    const double low = anyNumber(-1, 10);
    const Mixture::Sides sides = anyMixture().sides(low, low + anyNumber(0, 6));
    RC_ASSERT(near(sides.below + sides.within + sides.above, 1, 1e-12));
    RC_ASSERT(sides.below >= 0 && sides.within >= 0 && sides.above >= 0);
}

RC_GTEST_PROP(Property13, AWiderWindowHoldsMore, ())
{
    const Mixture mixture = anyMixture();
    const double low = anyNumber(0, 8);
    const double high = low + anyNumber(0, 2);
    RC_ASSERT(mixture.within(low - anyNumber(0, 3), high + anyNumber(0, 3)) >=
              mixture.within(low, high) - 1e-12);
}

RC_GTEST_PROP(Property13, TheWholeLineHoldsAll, ())
{
    const Mixture mixture = anyMixture();
    RC_ASSERT(mixture.within(lineLow, lineHigh) == 1);
    RC_ASSERT(near(mixture.within(lineLow, 4), mixture.below(4), 1e-12));
    RC_ASSERT(near(mixture.within(4, lineHigh), 1 - mixture.below(4), 1e-12));
}

RC_GTEST_PROP(Mixtures, GiveTheQuantileOfAChance, ())
{
    const Mixture mixture = anyMixture();
    const double p = anyNumber(0.001, 0.999);
    const double x = mixture.quantile(p);
    RC_ASSERT(mixture.below(x - 2e-6) <= p);
    RC_ASSERT(mixture.below(x + 2e-6) >= p);
}

RC_GTEST_PROP(NormalDistribution, IsTheInverseOfItsQuantile, ())
{
    const double p = std::pow(10, anyNumber(-12, -0.01));
    RC_ASSERT(near(normalBelow(normalQuantile(p)) / p, 1, 1e-12));
    RC_ASSERT(near(normalQuantile(1 - p), -normalQuantile(p), 1e-3 + 1e-15 / p));
}

// Across the place where the series for the tail takes over.
RC_GTEST_PROP(NormalDistribution, GoesOnSmoothlyFarOut, ())
{
    const double z = anyNumber(-37, -24);
    RC_ASSERT(near(logNormalBelow(z) / std::log(normalBelow(z)), 1, 1e-12));
    RC_ASSERT(near(millsRatio(z) * normalBelow(z) / normalDensity(z), 1, 1e-7));
    RC_ASSERT(logNormalBelow(z - 40) < logNormalBelow(z));
}

}  // namespace spile::outlook
