// What must hold of every course, whatever was scored. Numbers: the project's list of properties.
#include "tests/property/outlook_cases.hpp"
#include "tests/property/outlook_one_by_one.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <numeric>
#include <random>
#include <rapidcheck/gtest.h>

namespace spile::outlook {

namespace {

constexpr double exactly = 1e-9;

std::vector<std::size_t> anyOrder(std::size_t n)
{
    std::vector<std::size_t> order(n);
    std::iota(order.begin(), order.end(), 0U);
    std::shuffle(order.begin(), order.end(),
                 std::mt19937(*rc::gen::inRange<std::uint32_t>(1, 1'000'000)));
    return order;
}

// The same barrel with its records, tasters and sessions in another order and of other numbers.
Case turned(const Case& before)
{
    Case after = before;
    const std::size_t n = before.model.tasters.size();
    const std::vector<std::size_t> place = anyOrder(n);
    const std::vector<std::size_t> record = anyOrder(before.data.scores.size());
    for (std::size_t i = 0; i < n; ++i) {
        after.model.tasters.mean[place[i]] = before.model.tasters.mean[i];
        after.model.tasters.scatter[place[i]] = before.model.tasters.scatter[i];
        after.model.tasters.panel[place[i]] = before.model.tasters.panel[i];
        for (std::size_t j = 0; j < n; ++j) {
            after.model.tasters.covariance[place[i] * n + place[j]] =
                before.model.tasters.covariance[i * n + j];
        }
    }
    for (std::size_t i = 0; i < record.size(); ++i) {
        Scored& score = after.data.scores[i];
        score = before.data.scores[record[i]];
        score.taster = static_cast<int>(place[static_cast<std::size_t>(score.taster)]);
        score.session = 1000 - 7 * score.session;
    }
    return after;
}

void unequalTasters(TasterBelief& tasters)
{
    double sum = 0;
    for (std::size_t i = 0; i < tasters.size(); ++i) {
        tasters.mean[i] = anyNumber(-1, 1);
        tasters.panel[i] = anyNumber(0.1, 1);
        sum += tasters.panel[i];
        for (std::size_t j = 0; j < tasters.size(); ++j) {
            tasters.covariance[i * tasters.size() + j] += 0.1;  // of a bias that all share
        }
    }
    for (double& weight : tasters.panel) {
        weight /= sum;
    }
}

}  // namespace

RC_GTEST_PROP(Property01, OrderAndNumbersOfRecordsTastersAndSessionsDoNotMatter, ())
{
    Case one = anyCase();
    unequalTasters(one.model.tasters);
    const Case other = turned(one);
    const Course course(one.model, one.data);
    const Course again(other.model, other.data);
    RC_ASSERT(sayTheSame(course, again, one.age, 1e-10));
}

// Scores at the ends are settled by sweeps, which go on from one to the next.
RC_GTEST_PROP(Property01, OrderHardlyMattersWithScoresAtTheEnds, ())
{
    Case one = anyCase();
    cutAtEnds(one.data, 2, 8);
    const Case other = turned(one);
    const Course course(one.model, one.data);
    const Course again(other.model, other.data);
    RC_ASSERT(sayTheSame(course, again, one.age, 1e-3));
}

// Without rise and fall, whose beginning decays to 0 wherever 0 is.
RC_GTEST_PROP(Property02, AllMovesWithTheLevel, ())
{
    Case one = anyCase();
    one.model.prior.weight = {0.6, 0.2, 0, 0.2};
    Case other = one;
    const double step = anyNumber(-3, 3);
    for (Belief* belief :
         {&other.model.prior.start, &other.model.prior.end, &other.model.prior.linearStart}) {
        belief->mean += step;
    }
    for (Scored& score : other.data.scores) {
        score.line += step;
    }
    const Course course(one.model, one.data);
    const Course moved(other.model, other.data);
    const Mixture before = course.levelAt(one.age);
    const Mixture after = moved.levelAt(one.age);
    RC_ASSERT(near(after.mean(), before.mean() + step, exactly));
    RC_ASSERT(near(after.variance(), before.variance(), exactly));
    RC_ASSERT(near(after.below(4 + step), before.below(4), exactly));
    RC_ASSERT(near(after.quantile(0.1), before.quantile(0.1) + step, 3e-6));
    RC_ASSERT(near(course.logEvidence(), moved.logEvidence(), exactly));
}

RC_GTEST_PROP(Property03, TheLineCanBeReadFromItsOtherEnd, ())
{
    Case one = anyCase();
    one.model.prior.weight = {0.6, 0.2, 0, 0.2};
    for (double& mean : one.model.tasters.mean) {
        mean = anyNumber(-1, 1);
    }
    cutAtEnds(one.data, 1.5, 8.5);
    Case other = one;
    for (Belief* belief :
         {&other.model.prior.start, &other.model.prior.end, &other.model.prior.linearStart}) {
        belief->mean = lineHigh - belief->mean;
    }
    other.model.prior.slopePerYear.mean = -other.model.prior.slopePerYear.mean;
    for (double& mean : other.model.tasters.mean) {
        mean = -mean;
    }
    for (Scored& score : other.data.scores) {
        score.line = lineHigh - score.line;
    }
    const Course course(one.model, one.data);
    const Course mirrored(other.model, other.data);
    const Mixture before = course.levelAt(one.age);
    const Mixture after = mirrored.levelAt(one.age);
    RC_ASSERT(near(after.mean(), lineHigh - before.mean(), exactly));
    RC_ASSERT(near(after.variance(), before.variance(), exactly));
    RC_ASSERT(near(after.within(2, 5), before.within(5, 8), exactly));
    RC_ASSERT(near(after.within(0, 3), before.within(7, 10), exactly));
    RC_ASSERT(near(course.logEvidence(), mirrored.logEvidence(), exactly));
}

// Without the delayed shape, whose times are given in months.
RC_GTEST_PROP(Property04, TheUnitOfTimeDoesNotMatter, ())
{
    constexpr double days = 30.44;
    Case one = anyCase();
    one.model.prior.weight = {0.5, 0.2, 0.3, 0};
    Case other = one;
    for (Belief* rate :
         {&other.model.prior.logRate, &other.model.prior.logRise, &other.model.prior.logFall}) {
        rate->mean -= std::log(days);
    }
    other.model.prior.slopePerYear.mean /= days;
    other.model.prior.slopePerYear.deviation /= days;
    for (Scored& score : other.data.scores) {
        score.age *= days;
    }
    RC_ASSERT(sayTheSame(Course(one.model, one.data), one.age, Course(other.model, other.data),
                         one.age * days, exactly));
}

RC_GTEST_PROP(Property05, WithoutScoresThePriorIsForeseen, ())
{
    Case one = anyCase();
    unequalTasters(one.model.tasters);
    const double age = anyNumber(0, 30);
    const TasterBelief& tasters = one.model.tasters;
    double panelMean = 0;
    double panelVariance = 0;
    for (std::size_t i = 0; i < tasters.size(); ++i) {
        panelMean += tasters.panel[i] * tasters.mean[i];
        for (std::size_t j = 0; j < tasters.size(); ++j) {
            panelVariance +=
                tasters.panel[i] * tasters.panel[j] * tasters.covariance[i * tasters.size() + j];
        }
    }
    Mixture prior;
    for (const Shape& shape : shapesOf(one.model.prior, one.model.grid)) {
        const wood::Basis basis = shape.basis(age);
        Mixture::Part part{std::exp(shape.logPrior), panelMean, panelVariance};
        for (std::size_t a = 0; a < 2; ++a) {
            const Belief& amount = shape.amounts.at(a);
            part.mean += basis.at(a) * amount.mean;
            part.deviation += std::pow(basis.at(a) * amount.deviation, 2);
        }
        part.deviation = std::sqrt(part.deviation);
        prior.parts.push_back(part);
    }
    const Course course(one.model, {});
    const Mixture level = course.levelAt(age);
    for (const double at : {1.0, 3.0, 4.5, 6.0, 8.0}) {
        RC_ASSERT(near(level.below(at), prior.below(at), 1e-8));
    }
    RC_ASSERT(near(level.mean(), prior.mean(), 1e-7));
    RC_ASSERT(near(course.logEvidence(), 0, exactly));
}

RC_GTEST_PROP(Property06, TheSameFitTwiceIsTheSame, ())
{
    const Case one = anyCase();
    RC_ASSERT(sayTheSame(Course(one.model, one.data), Course(one.model, one.data), one.age, 0));
}

// All scores at once are what they are one after the other, by algebra of another form. A course
// takes no posterior for a prior, so that the one-by-one way stands in the test.
RC_GTEST_PROP(Property06, ScoresAtOnceAreScoresOneByOne, ())
{
    Case one = anyCase();
    unequalTasters(one.model.tasters);
    const Course course(one.model, one.data);
    const OneByOne slow = oneByOne(one.model, one.data, one.model.tasters.size(), one.age);
    const Mixture level = course.levelAt(one.age);
    // Of 275 parts those below 1e-8 are dropped.
    RC_ASSERT(near(level.mean(), slow.mean, 3e-5));
    RC_ASSERT(near(level.variance(), slow.variance, 3e-4));
    RC_ASSERT(near(course.logEvidence(), slow.logEvidence, 3e-6));
    for (std::size_t family = 0; family < families; ++family) {
        RC_ASSERT(
            near(course.familyWeight(static_cast<Family>(family)), slow.weight.at(family), 3e-6));
    }
}

// With one taster, who is the panel, a sitting's only score is the level with noise; with one noise
// that noise is known. Curves that are much alike, so that none is dropped on the way as
// negligible.
RC_GTEST_PROP(Property07, ProductOfPredictiveDensities, ())
{
    Case one = anyCase(1, 1);
    one.model.prior.weight = {0.6, 0.4, 0, 0};
    one.model.grid = {5, 1, 1, 0};
    const double sigma = one.model.noise.median;
    const double noise = sigma * sigma *
                         (std::pow(one.model.tasters.scatter.front(), 2) +
                          std::pow(one.model.noise.sessionShare, 2));
    CourseData seen;
    double sum = 0;
    for (const Scored& score : one.data.scores) {
        double density = 0;
        for (const Mixture::Part& part : Course(one.model, seen).levelAt(score.age).parts) {
            const double variance = part.deviation * part.deviation + noise;
            density += part.weight * std::exp(-std::pow(score.line - part.mean, 2) / variance / 2) /
                       std::sqrt(2 * std::numbers::pi * variance);
        }
        sum += std::log(density);
        seen.scores.push_back(score);
    }
    RC_ASSERT(near(Course(one.model, one.data).logEvidence(), sum, 1e-7));
}

RC_GTEST_PROP(Property08, MoreScoresNeverMakeAPartLessSure, ())
{
    const Case one = anyCase(4, 1);
    const auto family = static_cast<Family>(*rc::gen::inRange<int>(0, 2));  // one shape each
    const CourseModel model = single(one.model, family);
    CourseData fewer = one.data;
    while (!fewer.scores.empty()) {
        const double after = Course(model, fewer).levelAt(one.age).variance();
        fewer.scores.pop_back();
        RC_ASSERT(Course(model, fewer).levelAt(one.age).variance() >= after * (1 - exactly));
    }
}

RC_GTEST_PROP(Property09, MuchNoiseLeavesThePrior, ())
{
    Case one = anyCase(4, 1);
    one.model.noise.median = 1e6;
    const Mixture level = Course(one.model, one.data).levelAt(one.age);
    const Mixture prior = Course(one.model, {}).levelAt(one.age);
    RC_ASSERT(near(level.mean(), prior.mean(), 1e-6));
    RC_ASSERT(near(level.variance(), prior.variance(), 1e-6));
}

RC_GTEST_PROP(Property09, WithoutNoiseTheCourseGoesThroughTheScores, ())
{
    Case one = anyCase(1, 2);
    one.model = single(one.model, static_cast<Family>(*rc::gen::inRange<int>(0, 2)));
    one.model.noise = {1e-4, 0, 0};
    one.data.scores.resize(2);  // as many as a shape has amounts
    const Course course(one.model, one.data);
    for (const Scored& score : one.data.scores) {
        const Mixture level = course.levelAt(score.age);
        RC_ASSERT(near(level.mean(), score.line, 1e-4));
        RC_ASSERT(level.variance() < 1e-6);
    }
}

RC_GTEST_PROP(Property10, TastersWithoutBiasAreNoTasters, ())
{
    Case one = anyCase();
    const std::size_t n = one.model.tasters.size();
    const std::vector<double> scatter = one.model.tasters.scatter;
    one.model.tasters = unknownTasters(n, 1e-12);
    one.model.tasters.scatter = scatter;
    const Course course(one.model, one.data);
    const OneByOne none = oneByOne(one.model, one.data, 0, one.age);
    RC_ASSERT(near(course.levelAt(one.age).mean(), none.mean, 3e-5));
    RC_ASSERT(near(course.levelAt(one.age).variance(), none.variance, 3e-4));
    RC_ASSERT(near(course.logEvidence(), none.logEvidence, 3e-6));
}

namespace {

// A barrel with one score more, by a taster of its own who is not in the panel.
Case withStranger(const Case& before, double variance, double scatter)
{
    Case after = before;
    const std::size_t n = before.model.tasters.size();
    after.model.tasters = unknownTasters(n + 1, test::biasVariance);
    after.model.tasters.covariance.back() = variance;
    for (std::size_t i = 0; i < n; ++i) {
        after.model.tasters.scatter[i] = before.model.tasters.scatter[i];
        after.model.tasters.panel[i] = before.model.tasters.panel[i];
    }
    after.model.tasters.scatter.back() = scatter;
    after.model.tasters.panel.back() = 0;
    Scored score = before.data.scores[*rc::gen::inRange<std::size_t>(
        0, before.data.scores.size())];  // in one of the sessions
    score.taster = static_cast<int>(n);
    score.line = anyNumber(0, 10);
    after.data.scores.push_back(score);
    return after;
}

bool sameLevel(const Case& a, const Case& b, double within)
{
    const Mixture first = Course(a.model, a.data).levelAt(a.age);
    const Mixture second = Course(b.model, b.data).levelAt(b.age);
    return near(first.mean(), second.mean(), within) &&
           near(first.variance(), second.variance(), within);
}

}  // namespace

RC_GTEST_PROP(Property10, AScoreOfUnknownBiasTellsNothingOfTheLevel, ())
{
    const Case one = anyCase(4, 1);
    RC_ASSERT(sameLevel(one, withStranger(one, 1e9, 1), 1e-5));
}

// With one noise: a taster's scatter is relative to it, so that the score's density still is.
RC_GTEST_PROP(Property11, AScoreOfUnboundedNoiseIsNone, ())
{
    Case one = anyCase(4, 1);
    one.model.grid.noisePoints = 1;
    RC_ASSERT(sameLevel(one, withStranger(one, test::biasVariance, 1e5), 1e-5));
}

RC_GTEST_PROP(Property12, SittingsThatShareAllErrorsTellOnlyHowTastersDiffer, ())
{
    test::Draws draws(*rc::gen::inRange<std::uint64_t>(1, 1'000'000'000));
    constexpr int tasters = 3;
    CourseModel model = test::modelFor(tasters);
    test::SimulatedBarrel barrel =
        test::drawBarrel(test::drawFromPrior(model.prior, draws), tasters, 0, draws);
    for (int month = 6; month < 11; ++month) {
        test::sit(barrel, month, true, draws);  // all of them are there
    }
    model.noise.sessionShare = 1e5;
    model.grid.noisePoints = 1;  // what tasters differ by tells how noisy they are
    const Course course(model, barrel.data);
    const Mixture level = course.levelAt(12);
    const Mixture prior = Course(model, {}).levelAt(12);
    RC_ASSERT(near(level.mean(), prior.mean(), 1e-4));
    RC_ASSERT(near(level.variance(), prior.variance(), 1e-4));
    std::array<double, tasters> mean = {};
    std::array<double, tasters* tasters> covariance = {};
    course.tasters(mean, covariance);
    const double difference = covariance[0] + covariance[4] - 2 * covariance[1];
    RC_ASSERT(difference < 0.5 * 2 * test::biasVariance);
}

}  // namespace spile::outlook
