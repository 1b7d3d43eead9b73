// Laws of variance components, and the same criterion written out with full matrices.
#include "core/panel/components.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>
#include <rapidcheck/gtest.h>

namespace spile::panel {

namespace {

struct Scores {
    std::vector<double> y;
    std::vector<Factor> factors;
};

// Glasses by tasters; each score is missing with a chance, but for those of the first taster.
Scores scoresOf(int glasses, int tasters, double missing, unsigned seed)
{
    std::mt19937 random(seed);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> uniform;
    std::vector<double> ofTaster(static_cast<std::size_t>(tasters));
    for (double& effect : ofTaster) {
        effect = 0.8 * normal(random);
    }
    Scores scores{{}, {{{}, glasses}, {{}, tasters}}};
    for (int glass = 0; glass < glasses; ++glass) {
        const double ofGlass = 2 * normal(random);
        for (int taster = 0; taster < tasters; ++taster) {
            const double noise = normal(random);
            if (uniform(random) >= missing || taster == 0) {
                scores.y.push_back(5 + ofGlass + ofTaster[static_cast<std::size_t>(taster)] +
                                   noise);
                scores.factors[0].level.push_back(glass);
                scores.factors[1].level.push_back(taster);
            }
        }
    }
    return scores;
}

Scores anyScores(double missing)
{
    return scoresOf(*rc::gen::inRange(4, 14), *rc::gen::inRange(3, 7), missing,
                    *rc::gen::arbitrary<unsigned>());
}

using Matrix = std::vector<std::vector<double>>;

// Turns a positive definite matrix into its inverse by Gauss and Jordan; returns log |m|.
double invert(Matrix& m)
{
    double logDeterminant = 0;
    for (std::size_t k = 0; k < m.size(); ++k) {
        const double pivot = m[k][k];
        logDeterminant += std::log(pivot);
        m[k][k] = 1;
        for (double& value : m[k]) {
            value /= pivot;
        }
        for (std::size_t i = 0; i < m.size(); ++i) {
            if (i != k) {
                const double times = m[i][k];
                m[i][k] = 0;
                for (std::size_t j = 0; j < m.size(); ++j) {
                    m[i][j] -= times * m[k][j];
                }
            }
        }
    }
    return logDeterminant;
}

// What the definition says: V = residual^2 I + the sum of deviation^2 ZZ', the generalised least
// squares mean, -2 log of the restricted likelihood and the predictions s^2 Z'V^-1 (y - mean).
struct WrittenOut {
    double criterion = 0;
    double mean = 0;
    std::vector<std::vector<double>> effects;
};

WrittenOut writtenOut(const Scores& scores, const std::vector<double>& deviations, double residual)
{
    const std::size_t n = scores.y.size();
    Matrix v(n, std::vector<double>(n));
    for (std::size_t i = 0; i < n; ++i) {
        v[i][i] = residual * residual;
        for (std::size_t j = 0; j < n; ++j) {
            for (std::size_t f = 0; f < deviations.size(); ++f) {
                const auto& level = scores.factors[f].level;
                v[i][j] += level[i] == level[j] ? deviations[f] * deviations[f] : 0;
            }
        }
    }
    WrittenOut result;
    result.criterion = invert(v);
    double weight = 0;
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j) {
            weight += v[i][j];
            result.mean += v[i][j] * scores.y[j];
        }
    }
    result.mean /= weight;
    std::vector<double> image(n);
    double squares = 0;
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j) {
            image[i] += v[i][j] * (scores.y[j] - result.mean);
        }
        squares += image[i] * (scores.y[i] - result.mean);
    }
    result.criterion +=
        std::log(weight) + squares + static_cast<double>(n - 1) * std::log(2 * std::numbers::pi);
    for (std::size_t f = 0; f < deviations.size(); ++f) {
        result.effects.emplace_back(static_cast<std::size_t>(scores.factors[f].levels));
        for (std::size_t i = 0; i < n; ++i) {
            result.effects[f][static_cast<std::size_t>(scores.factors[f].level[i])] +=
                deviations[f] * deviations[f] * image[i];
        }
    }
    return result;
}

}  // namespace

RC_GTEST_PROP(Components, AreWhatFullMatricesGive, ())
{
    const Scores scores = anyScores(0.3);
    const auto found = componentsOf(scores.y, scores.factors).value();
    const WrittenOut full = writtenOut(scores, found.deviations, found.residual);
    RC_ASSERT(std::fabs(found.criterion - full.criterion) < 1e-7);
    RC_ASSERT(std::fabs(found.mean - full.mean) < 1e-7);
    for (std::size_t f = 0; f < 2; ++f) {
        for (std::size_t i = 0; i < full.effects[f].size(); ++i) {
            RC_ASSERT(std::fabs(found.effects[f][i] - full.effects[f][i]) < 1e-7);
        }
    }
}

RC_GTEST_PROP(Components, HaveTheLeastCriterion, ())
{
    const Scores scores = anyScores(0.3);
    const auto found = componentsOf(scores.y, scores.factors).value();
    for (const double step : {-0.05, -0.001, 0.001, 0.05}) {
        for (std::size_t f = 0; f < 3; ++f) {
            std::vector<double> deviations = found.deviations;
            double residual = found.residual;
            (f < 2 ? deviations[f] : residual) += step;
            RC_ASSERT(writtenOut(scores, deviations, residual).criterion >= found.criterion - 1e-8);
        }
    }
}

// The error of a predicted effect is the effect itself less what the scores tell of it.
RC_GTEST_PROP(Components, KnowTheErrorsOfTheirEffects, ())
{
    const Scores scores = anyScores(0.2);
    const auto found = componentsOf(scores.y, scores.factors).value();
    const double step = 1e-3;
    for (const LevelAt at : {LevelAt{0, 1}, LevelAt{0, 3}, LevelAt{1, 0}, LevelAt{1, 2}}) {
        // What the prediction of each level answers to a unit of this level's effect.
        Scores moved = scores;
        for (std::size_t i = 0; i < moved.y.size(); ++i) {
            moved.y[i] +=
                moved.factors[at.factor].level[i] == static_cast<int>(at.level) ? step : 0;
        }
        const WrittenOut before = writtenOut(scores, found.deviations, found.residual);
        const WrittenOut after = writtenOut(moved, found.deviations, found.residual);
        const double variance = found.deviations[at.factor] * found.deviations[at.factor];
        for (std::size_t f = 0; f < 2; ++f) {
            for (std::size_t i = 0; i < after.effects[f].size(); ++i) {
                const double told = (after.effects[f][i] - before.effects[f][i]) / step * variance;
                const bool isSelf = f == at.factor && i == at.level;
                RC_ASSERT(std::fabs(found.covariance(at, {f, i}) - (isSelf ? variance : 0) + told) <
                          1e-7);
            }
        }
    }
}

RC_GTEST_PROP(Components, HaveEffectsThatSumToNothingInAFullTable, ())
{
    const Scores scores = anyScores(0);
    const auto found = componentsOf(scores.y, scores.factors).value();
    for (const auto& effects : found.effects) {
        double sum = 0;
        for (const double effect : effects) {
            sum += effect;
        }
        RC_ASSERT(std::fabs(sum) < 1e-9);
    }
}

// Tasters whose means are all the same differ less than chance would have it.
RC_GTEST_PROP(Components, AreExactlyZeroWhereNothingIsSeen, ())
{
    const int tasters = *rc::gen::inRange(3, 7);
    Scores scores = scoresOf(*rc::gen::inRange(4, 14), tasters, 0, *rc::gen::arbitrary<unsigned>());
    std::vector<double> mean(static_cast<std::size_t>(tasters));
    for (std::size_t i = 0; i < scores.y.size(); ++i) {
        mean[static_cast<std::size_t>(scores.factors[1].level[i])] +=
            scores.y[i] * tasters / static_cast<double>(scores.y.size());
    }
    for (std::size_t i = 0; i < scores.y.size(); ++i) {
        scores.y[i] -= mean[static_cast<std::size_t>(scores.factors[1].level[i])];
    }
    const auto found = componentsOf(scores.y, scores.factors).value();
    RC_ASSERT(found.deviations[1] == 0);
    for (const double effect : found.effects[1]) {
        RC_ASSERT(effect == 0);
    }
    RC_ASSERT(std::isfinite(found.criterion) && found.residual > 0);
    RC_ASSERT(found.covariance({1, 0}, {1, 0}) == 0);
}

RC_GTEST_PROP(Components, MoveAndStretchWithTheScores, ())
{
    const Scores scores = anyScores(0.3);
    const double shift = *rc::gen::inRange(-1000, 1000) / 10.0;
    std::vector<double> moved = scores.y;
    for (double& y : moved) {
        y = 2 * y + shift;
    }
    const auto before = componentsOf(scores.y, scores.factors).value();
    const auto after = componentsOf(moved, scores.factors).value();
    RC_ASSERT(std::fabs(2 * before.mean + shift - after.mean) < 1e-5);
    RC_ASSERT(std::fabs(2 * before.residual - after.residual) < 1e-5);
    for (std::size_t f = 0; f < 2; ++f) {
        RC_ASSERT(std::fabs(2 * before.deviations[f] - after.deviations[f]) < 1e-5);
    }
    RC_ASSERT(componentsOf(scores.y, scores.factors)->criterion == before.criterion);
}

TEST(Components, FindTheTruthInManyScores)
{
    const Scores scores = scoresOf(2000, 12, 0.7, 7);
    const auto found = componentsOf(scores.y, scores.factors).value();
    EXPECT_NEAR(found.deviations[0], 2, 0.1);
    EXPECT_NEAR(found.deviations[1], 0.8, 0.4);
    EXPECT_NEAR(found.residual, 1, 0.03);
}

}  // namespace spile::panel
