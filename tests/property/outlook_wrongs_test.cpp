// What is suspected, and tasters shared by barrels. Numbers: the project's list of properties.
#include "core/outlook/shared_tasters.hpp"
#include "tests/property/outlook_cases.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::outlook {

namespace {

// Barrels that three tasters share, whose biases are theirs in all of them.
std::vector<SharedBarrel> anyBarrels(std::size_t most)
{
    test::Draws draws(*rc::gen::inRange<std::uint64_t>(1, 1'000'000'000));
    std::vector<SharedBarrel> barrels(*rc::gen::inRange<std::size_t>(1, most + 1));
    std::vector<double> house;
    for (int i = 0; i < 3; ++i) {
        house.push_back(draws.normal(0, 0.8));
    }
    for (SharedBarrel& barrel : barrels) {
        test::SimulatedBarrel drawn;
        drawn.course = test::drawFromPrior(barrel.prior, draws);
        for (const double bias : house) {
            drawn.bias.push_back(bias + draws.normal(0, 0.5));
        }
        const int sittings = draws.whole(1, 5);
        for (int i = 0; i < sittings; ++i) {
            test::sit(drawn, 6 + i, false, draws);
        }
        barrel.data = drawn.data;
    }
    return barrels;
}

SharedSetting threeTasters()
{
    SharedSetting setting;
    setting.scatter = {1, 1, 1};
    setting.panel = {1.0 / 3, 1.0 / 3, 1.0 / 3};
    return setting;
}

}  // namespace

RC_GTEST_PROP(Property22, WithoutAChanceOfItNothingIsWrong, ())
{
    Case one = anyCase();
    const Course base(one.model, one.data);
    RC_ASSERT(base.suspects().size() == 1 && base.suspects()[0].what == Suspect::What::Nothing);
    one.model.wrongs.chance = 1e-12;
    const Course nearly(one.model, one.data);
    RC_ASSERT(sayTheSame(base, nearly, one.age, 1e-4));
}

RC_GTEST_PROP(Property22, ChancesOfWhatIsWrongAddToOne, ())
{
    Case one = anyCase();
    one.model.wrongs.chance = anyNumber(0.001, 0.2);
    const Course course(one.model, one.data);
    double sum = 0;
    double last = 1;
    for (const Suspect& suspect : course.suspects()) {
        sum += suspect.chance;
        RC_ASSERT(suspect.chance <= last + 1e-12);
        last = suspect.chance;
    }
    RC_ASSERT(near(sum, 1, 1e-9));
}

// A score with more variance is a taster of that scatter, whose bias is that of the taster: here
// one who is not biased. So each hypothesis can be fitted on its own.
RC_GTEST_PROP(Property22, EachHypothesisIsAFitOfItsOwn, ())
{
    Case one = anyCase(1, 2);
    one.model.grid.noisePoints = 1;
    one.model.noise.sessionShare = 0;
    one.model.tasters = unknownTasters(1, 1e-12);
    one.model.wrongs.chance = 0.03;
    const double sigma = one.model.noise.median;
    const double odds = 0.03 / 0.97;
    const auto n = one.data.scores.size();
    std::vector<double> weight(n + 1);
    CourseModel apart = one.model;
    apart.wrongs.chance = 0;
    weight[n] = std::exp(Course(apart, one.data).logEvidence());
    double sum = weight[n];
    apart.tasters = unknownTasters(2, 1e-12);
    apart.tasters.scatter[1] = std::sqrt(1 + one.model.wrongs.scoreVariance / (sigma * sigma));
    for (std::size_t i = 0; i < n; ++i) {
        CourseData data = one.data;
        data.scores[i].taster = 1;
        weight[i] = odds * std::exp(Course(apart, data).logEvidence());
        sum += weight[i];
    }
    for (const Suspect& suspect : Course(one.model, one.data).suspects()) {
        const std::size_t place =
            suspect.what == Suspect::What::Nothing ? n : static_cast<std::size_t>(suspect.which);
        RC_ASSERT(near(suspect.chance, weight[place] / sum, 1e-6));
    }
}

// Not always: about one barrel of some thousands is such that nothing need be wrong.
TEST(Property22, AScoreFarOffIsTheFirstSuspect)
{
    constexpr int barrels = 1000;
    int missed = 0;
    for (int i = 0; i < barrels; ++i) {
        test::Draws draws(1 + static_cast<std::uint64_t>(i) * 7919);
        constexpr int tasters = 3;
        CourseModel model = test::modelFor(tasters);
        test::SimulatedBarrel barrel =
            test::drawBarrel(test::drawFromPrior(model.prior, draws), tasters, 0, draws);
        barrel.sigma = 0.6;
        for (int month = 6; month < 12; ++month) {
            test::sit(barrel, month, true, draws);
        }
        model.wrongs.chance = 0.03;
        const auto moved = static_cast<std::size_t>(i) * 31 % barrel.data.scores.size();
        barrel.data.scores[moved].line += i % 2 == 0 ? 6.0 : -6.0;
        const Suspect first = Course(model, barrel.data).suspects().front();
        const bool found =
            first.what == Suspect::What::Score && first.which == static_cast<int>(moved);
        missed += found ? 0 : 1;
    }
    EXPECT_LE(missed, 3);
}

RC_GTEST_PROP(Property23, TheOrderOfBarrelsDoesNotMatterInTheEnd, ())
{
    constexpr int sweeps = 16;
    std::vector<SharedBarrel> barrels = anyBarrels(5);
    SharedTasters one(threeTasters());
    RC_ASSERT(one.learn(barrels, sweeps, Job()));
    std::vector<SharedBarrel> turned(barrels.rbegin(), barrels.rend());
    SharedTasters other(threeTasters());
    RC_ASSERT(other.learn(turned, sweeps, Job()));
    for (std::size_t taster = 0; taster < 3; ++taster) {
        RC_ASSERT(near(one.bias(taster).mean, other.bias(taster).mean, 1e-6));
        RC_ASSERT(near(one.bias(taster).deviation, other.bias(taster).deviation, 1e-6));
    }
    for (std::size_t i = 0; i < barrels.size(); ++i) {
        const std::size_t there = barrels.size() - 1 - i;
        RC_ASSERT(sayTheSame(one.courseOf(barrels[i], i), other.courseOf(turned[there], there), 12,
                             1e-6));
    }
}

RC_GTEST_PROP(Property23, OneBarrelAloneIsFittedDirectly, ())
{
    const SharedBarrel barrel = anyBarrels(1).front();
    const SharedSetting setting = threeTasters();
    SharedTasters shared(setting);
    RC_ASSERT(shared.learn({&barrel, 1}, 3, Job()));
    CourseModel model = test::modelFor(3);
    model.prior = barrel.prior;
    const Course direct(model, barrel.data);
    RC_ASSERT(sayTheSame(shared.courseOf(barrel, 0), direct, 12, 1e-9));
    std::array<double, 3> mean = {};
    std::array<double, 9> covariance = {};
    direct.tasters(mean, covariance);
    const double share = setting.houseVariance / (setting.houseVariance + setting.ownVariance);
    for (std::size_t taster = 0; taster < 3; ++taster) {
        const Belief bias = shared.bias(taster);
        RC_ASSERT(near(bias.mean, share * mean.at(taster), 1e-8));
        const double variance =
            share * share * covariance.at(taster * 4) + setting.houseVariance * (1 - share);
        RC_ASSERT(near(bias.deviation, std::sqrt(variance), 1e-8));
    }
}

// The classes show no precisions: what is known of each taster, of all and of all but one barrel,
// has a deviation above 0 and never more than before anything was known.
RC_GTEST_PROP(Property23, WhatIsKnownStaysADistribution, ())
{
    std::vector<SharedBarrel> barrels = anyBarrels(8);
    SharedSetting setting = threeTasters();
    setting.wrongs.chance = 0.03;
    for (SharedBarrel& barrel : barrels) {
        cutAtEnds(barrel.data, 1, 9);
        for (Scored& score : barrel.data.scores) {  // what no curve explains
            score.line += *rc::gen::inRange(0, 6) == 0 ? 5 : 0;
        }
    }
    SharedTasters shared(setting);
    RC_ASSERT(shared.learn(barrels, 4, Job()));
    for (std::size_t taster = 0; taster < 3; ++taster) {
        const Belief bias = shared.bias(taster);
        RC_ASSERT(std::isfinite(bias.mean) && bias.deviation > 0 && bias.deviation < 2);
    }
    for (std::size_t i = 0; i < barrels.size(); ++i) {
        const Course course = shared.courseOf(barrels[i], i);
        RC_ASSERT(std::isfinite(course.logEvidence()));
        RC_ASSERT(course.levelAt(12).variance() > 0);
    }
}

}  // namespace spile::outlook
