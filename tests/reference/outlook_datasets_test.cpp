// Three small sets of scores, whose posteriors were computed apart from this program. Data and
// model: made for it. Sources: "JAGS": computed with JAGS 4.3 (M. Plummer, "JAGS: a program for
// analysis of Bayesian graphical models using Gibbs sampling", 2003), 160,000 thinned draws, at
// least 86,000 effective ones; "grid": the same mixture, computed with numpy.
#include "core/outlook/shared_tasters.hpp"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace spile::outlook {

namespace {

constexpr double biasVariance = 0.64 + 0.25;
constexpr double windowLow = 4.5;
constexpr double windowHigh = 6.5;

CoursePrior saturatingPrior()
{
    CoursePrior prior;
    prior.start = {1, 1};
    prior.end = {6, 2};
    prior.logRate = {std::log(0.12), 0.6};
    prior.weight = {1, 0, 0, 0};
    return prior;
}

CourseModel modelOf(std::size_t tasters, const CourseGrid& grid)
{
    CourseModel model;
    model.prior = saturatingPrior();
    model.grid = grid;
    model.tasters = unknownTasters(tasters, biasVariance);
    return model;
}

constexpr CourseGrid fine{61, 4, 21, 4};
constexpr CourseGrid middling{25, 3, 7, 2.5};

CourseData firstSet() { return {{{6, 1, 0, 3.0}, {7, 2, 0, 3.9}}, {}, {}}; }

CourseData secondSet()
{
    return {{{6, 1, 0, 5.3},
             {6, 1, 1, 4.1},
             {6, 1, 2, 3.4},
             {7, 2, 0, 5.1},
             {7, 2, 1, 3.8},
             {7, 2, 2, 4.6},
             {8, 3, 0, 5.9},
             {8, 3, 1, 5.4},
             {8, 3, 2, 5.6},
             {9, 4, 0, 3.0},
             {9, 4, 2, 2.7},
             {10, 5, 0, 6.4},
             {10, 5, 2, 5.9}},
            {},
            {}};
}

struct Expected {
    double age, mean, deviation, low, high, within;  // low, high: 5 and 95 % points
};

void expectGrid(const Course& course, const std::vector<Expected>& all)
{
    for (const Expected& expected : all) {
        const Mixture level = course.levelAt(expected.age);
        EXPECT_NEAR(level.mean(), expected.mean, 6e-5);
        EXPECT_NEAR(std::sqrt(level.variance()), expected.deviation, 6e-5);
        EXPECT_NEAR(level.within(windowLow, windowHigh), expected.within, 6e-5);
        if (expected.low != 0) {
            EXPECT_NEAR(level.quantile(0.05), expected.low, 6e-4);
            EXPECT_NEAR(level.quantile(0.95), expected.high, 6e-4);
        }
    }
}

// Within four standard errors of the chain's own, as for a normal distribution.
void expectChain(const Course& course, const std::vector<Expected>& all)
{
    const double root = std::sqrt(86000.0);
    for (const Expected& expected : all) {
        const Mixture level = course.levelAt(expected.age);
        const double error = 4 * expected.deviation / root;
        EXPECT_NEAR(level.mean(), expected.mean, error);
        EXPECT_NEAR(std::sqrt(level.variance()), expected.deviation, error / std::sqrt(2));
        constexpr double ofQuantile = 2.11;  // sqrt(.05 x .95) / density of the 5 % point
        EXPECT_NEAR(level.quantile(0.05), expected.low, ofQuantile * error);
        EXPECT_NEAR(level.quantile(0.95), expected.high, ofQuantile * error);
        EXPECT_NEAR(level.within(windowLow, windowHigh), expected.within,
                    4 * std::sqrt(expected.within * (1 - expected.within)) / root);
    }
}

}  // namespace

TEST(FirstSet, AgreesWithTheGrids)
{
    const Course course(modelOf(1, fine), firstSet());
    expectGrid(course, {{7, 3.5794, 0.6599, 2.508, 4.661, 0.0752},
                        {10, 4.1458, 0.7624, 2.907, 5.396, 0.3049},
                        {13, 4.5491, 0.8752, 3.132, 5.992, 0.5042}});
    EXPECT_NEAR(course.logEvidence(), -2.95828, 6e-6);
    expectGrid(Course(modelOf(1, middling), firstSet()), {{7, 3.5796, 0.6599, 0, 0, 0.0753},
                                                          {10, 4.1461, 0.7623, 0, 0, 0.3052},
                                                          {13, 4.5496, 0.8750, 0, 0, 0.5043}});
}

TEST(SecondSet, AgreesWithTheGrids)
{
    const Course course(modelOf(3, fine), secondSet());
    expectGrid(course, {{10, 5.0697, 0.4215, 4.379, 5.760, 0.9137},
                        {13, 5.4850, 0.5372, 4.615, 6.377, 0.9377},
                        {16, 5.7730, 0.6553, 4.726, 6.875, 0.8430}});
    EXPECT_NEAR(course.logEvidence(), -22.45557, 6e-6);
    expectGrid(Course(modelOf(3, middling), secondSet()), {{10, 5.0700, 0.4211, 0, 0, 0.9140},
                                                           {13, 5.4855, 0.5368, 0, 0, 0.9380},
                                                           {16, 5.7737, 0.6547, 0, 0, 0.8432}});
}

TEST(FirstSet, AgreesWithTheChain)
{
    expectChain(Course(modelOf(1, fine), firstSet()), {{7, 3.5785, 0.6604, 2.511, 4.663, 0.0751},
                                                       {10, 4.1442, 0.7625, 2.906, 5.392, 0.3040},
                                                       {13, 4.5472, 0.8746, 3.130, 5.987, 0.5031}});
}

TEST(SecondSet, AgreesWithTheChain)
{
    expectChain(Course(modelOf(3, fine), secondSet()),
                {{10, 5.0701, 0.4205, 4.382, 5.761, 0.9148},
                 {13, 5.4851, 0.5357, 4.616, 6.376, 0.9380},
                 {16, 5.7728, 0.6533, 4.728, 6.874, 0.8442}});
}

TEST(SecondSet, EntersAndLeavesAsTheGridSays)
{
    const Course course(modelOf(3, fine), secondSet());
    constexpr std::array ages = {10.0, 12.0, 14.0, 18.0, 24.0};
    constexpr std::array entered = {0.9144, 0.9605, 0.9740, 0.9819, 0.9847};
    constexpr std::array left = {0.0008, 0.0125, 0.0603, 0.2120, 0.3565};
    for (std::size_t i = 0; i < ages.size(); ++i) {
        const Mixture level = course.levelAt(ages.at(i));
        EXPECT_NEAR(1 - level.below(windowLow), entered.at(i), 6e-5);
        EXPECT_NEAR(1 - level.below(windowHigh), left.at(i), 6e-5);
    }
}

TEST(SecondSet, WeighsTheShapesAsTheGridSays)
{
    CourseModel model = modelOf(3, CourseGrid{15, 2.7, 5, 2.5});
    model.prior.linearStart = {1, 1.2};
    model.prior.slopePerYear = {3, 2};
    model.prior.height = {5.5, 2};
    model.prior.logRise = {std::log(0.2), 0.5};
    model.prior.logFall = {std::log(0.03), 0.5};
    model.prior.weight = {0.5, 0.1, 0.2, 0.2};
    const Course course(model, secondSet());
    EXPECT_NEAR(course.familyWeight(Family::Saturating), 0.644, 6e-4);
    EXPECT_NEAR(course.familyWeight(Family::RiseAndFall), 0.191, 6e-4);
    EXPECT_NEAR(course.familyWeight(Family::Delayed), 0.088, 6e-4);
    EXPECT_NEAR(course.familyWeight(Family::Linear), 0.077, 6e-4);
}

TEST(SecondSet, HasASuspectSession)
{
    CourseModel model = modelOf(3, middling);
    EXPECT_NEAR(Course(model, secondSet()).levelAt(10).mean(), 5.07, 6e-3);
    model.wrongs.chance = 0.03;
    const Course course(model, secondSet());
    EXPECT_NEAR(course.levelAt(10).mean(), 5.48, 6e-3);
    const std::vector<Suspect> suspects = course.suspects();
    EXPECT_EQ(suspects.at(0).what, Suspect::What::Session);
    EXPECT_EQ(suspects.at(0).which, 4);
    EXPECT_NEAR(suspects.at(0).chance, 0.71, 6e-3);
    EXPECT_EQ(suspects.at(1).what, Suspect::What::Nothing);
    EXPECT_NEAR(suspects.at(1).chance, 0.22, 6e-3);
}

namespace {

using Sitting = std::vector<std::pair<int, double>>;  // tasters 1 to 3 and their scores

SharedBarrel barrelOf(const std::vector<Sitting>& sittings)
{
    SharedBarrel barrel{saturatingPrior(), {}};
    for (std::size_t i = 0; i < sittings.size(); ++i) {
        for (const auto& [taster, line] : sittings[i]) {
            barrel.data.scores.push_back(
                {6.0 + static_cast<double>(i), static_cast<int>(i), taster - 1, line, false});
        }
    }
    return barrel;
}

std::vector<SharedBarrel> thirdSet()
{
    return {
        barrelOf({{{2, 0.4}, {3, 5.5}}, {{3, 2.9}}}),
        barrelOf(
            {{{1, 0.0}, {2, 5.0}, {3, 4.8}}, {{2, 2.8}, {3, 5.2}}, {{1, 1.2}, {2, 3.0}, {3, 4.2}}}),
        barrelOf({{{1, 2.9}, {3, 6.0}},
                  {{2, 4.0}, {3, 4.3}},
                  {{1, 4.1}, {2, 3.6}, {3, 8.5}},
                  {{1, 1.3}, {2, 1.7}, {3, 4.4}}}),
        barrelOf({{{1, 6.9}, {2, 6.0}, {3, 9.0}},
                  {{1, 8.1}, {2, 7.3}, {3, 9.0}},
                  {{1, 8.1}, {2, 6.8}, {3, 9.2}},
                  {{3, 9.2}},
                  {{1, 7.0}, {3, 9.1}}}),
        barrelOf({{{3, 5.5}}, {{1, 4.5}, {2, 5.0}, {3, 3.9}}})};
}

}  // namespace

// Expected: five barrels and three shared tasters. By expectation propagation with numpy: biases
// and levels three months after the last sitting. Jointly with JAGS: the biases, whose deviations
// expectation propagation makes a little small.
TEST(ThirdSet, TellsTheSharedTastersAndTheLevels)
{
    SharedSetting setting;
    setting.grid = middling;
    setting.scatter = {1, 1, 1};
    setting.panel = {1.0 / 3, 1.0 / 3, 1.0 / 3};
    const std::vector<SharedBarrel> barrels = thirdSet();
    SharedTasters shared(setting);
    ASSERT_TRUE(shared.learn(barrels, 8, Job()));

    constexpr std::array bias = {-0.5195, -0.3237, 1.2879};
    constexpr std::array biasDeviation = {0.509, 0.496, 0.477};
    constexpr std::array chainBias = {-0.5228, -0.3263, 1.2853};
    constexpr std::array chainDeviation = {0.512, 0.501, 0.478};
    for (std::size_t taster = 0; taster < 3; ++taster) {
        const Belief known = shared.bias(taster);
        EXPECT_NEAR(known.mean, bias.at(taster), 0.001);
        EXPECT_NEAR(known.deviation, biasDeviation.at(taster), 0.001);
        EXPECT_NEAR(known.mean, chainBias.at(taster), 0.005);
        EXPECT_NEAR(known.deviation, chainDeviation.at(taster), 0.006);
    }
    constexpr std::array level = {3.1712, 3.7988, 4.5447, 8.3738, 5.0869};
    constexpr std::array deviation = {0.894, 0.634, 0.622, 0.434, 0.749};
    for (std::size_t i = 0; i < barrels.size(); ++i) {
        const double last = barrels[i].data.scores.back().age;
        const Mixture foreseen = shared.courseOf(barrels[i], i).levelAt(last + 3);
        EXPECT_NEAR(foreseen.mean(), level.at(i), 0.001);
        EXPECT_NEAR(std::sqrt(foreseen.variance()), deviation.at(i), 0.001);
    }
}

}  // namespace spile::outlook
