// Simulation-based calibration: S. Talts et al., "Validating Bayesian inference algorithms with
// simulation-based calibration", arXiv:1804.06788 (2018), from memory. The barrels are simulated
// with assumed values: they test the mathematics, not beer. The bars are the project's own.
#include "tests/support/simulated_forecasts.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace spile::test {

namespace {

constexpr int barrels = 6000;

}  // namespace

TEST(Property18_Calibration, OfBarrelsUnderTheModel)
{
    constexpr double thousandth =
        43.82;  // of chi square with 19 degrees of freedom; from R, qchisq
    for (const std::uint64_t seed : {1U, 2U, 3U}) {
        for (const Calibration& one : calibrate(barrels, seed)) {
            EXPECT_NEAR(one.inside50, 0.50, 0.03);
            EXPECT_NEAR(one.inside80, 0.80, 0.03);
            EXPECT_NEAR(one.inside95, 0.95, 0.03);
            EXPECT_LT(one.chiSquare(), thousandth) << "seed " << seed;
        }
    }
}

TEST(Calibration, HoldsAndForecastsAreBetterWhateverTheTruth)
{
    double sum = 0;
    double ratios = 0;
    for (const Truth truth : truths) {
        SCOPED_TRACE(nameOf(truth));
        const TruthErrors errors = foresee(truth, barrels, 7);
        for (const Calibration& one : errors.horizons) {
            EXPECT_GE(one.inside95, 0.92);
        }
        EXPECT_LE(errors.outlook, 0.80 * errors.lastValue);
        EXPECT_LE(errors.outlook, 0.50 * errors.line);
        sum += errors.outlook / truths.size();
        ratios += errors.outlook / errors.lastValue / truths.size();
    }
    EXPECT_LE(sum, 0.72);
    EXPECT_LE(ratios, 0.72);
}

TEST(ReadyDates, AreForeseenBetterThanWithoutTheModel)
{
    constexpr int dated = 1500;
    for (const bool mixed : {false, true}) {
        for (const int sittings : {2, 4, 6}) {
            SCOPED_TRACE(sittings);
            const DateErrors errors = readyDates(mixed, sittings, dated, 11);
            EXPECT_LT(errors.outlook, errors.lastValue);
            EXPECT_LT(errors.outlook, errors.lastTwo);
            if (sittings < 6) {
                EXPECT_LT(errors.outlook, errors.line);
            }
        }
    }
}

// The grid that ships, beside one of twice its density. That of the noise is coarse: a barrel with
// many scores has a narrow posterior between its points, so that 0.003 holds in the middle of drawn
// barrels and not of each. The interval, which is wide beside that, stays calibrated (18).
TEST(Property16, AFinerGridChangesLittle)
{
    constexpr std::size_t drawn = 400;
    Draws draws(77);
    std::vector<double> means;
    std::vector<double> chances;
    for (std::size_t i = 0; i < drawn; ++i) {
        const int tasters = draws.whole(1, 4);
        const outlook::CourseModel model = modelFor(static_cast<std::size_t>(tasters));
        const SimulatedBarrel barrel =
            drawBarrel(drawFromPrior(model.prior, draws), tasters, draws.whole(0, 7), draws);
        const double age = barrel.lastAge + draws.uniform(0, 9);
        outlook::CourseModel finer = model;
        finer.grid.ratePoints = 2 * model.grid.ratePoints - 1;
        finer.grid.noisePoints = 2 * model.grid.noisePoints - 1;
        const outlook::Mixture level = outlook::Course(model, barrel.data).levelAt(age);
        const outlook::Mixture better = outlook::Course(finer, barrel.data).levelAt(age);
        means.push_back(std::fabs(level.mean() - better.mean()));
        chances.push_back(std::fabs(level.within(4.5, 6.5) - better.within(4.5, 6.5)));
    }
    std::sort(means.begin(), means.end());
    std::sort(chances.begin(), chances.end());
    EXPECT_LT(means[drawn / 2], 0.003);
    EXPECT_LT(chances[drawn / 2], 0.003);
    EXPECT_LT(means[drawn * 95 / 100], 0.03);
    EXPECT_LT(chances[drawn * 95 / 100], 0.01);
}

}  // namespace spile::test
