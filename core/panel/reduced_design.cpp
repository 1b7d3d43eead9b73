#include "core/panel/reduced_design.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>
#include <utility>

namespace spile::panel {

ReducedDesign::ReducedDesign(const std::vector<double>& y, const std::vector<Factor>& factors)
    : scores_(y.size())
{
    // Relative to the first score first, so that a common shift of all scores changes little.
    const double first = y.front();
    mean_ = first + std::accumulate(y.begin(), y.end(), 0.0, [first](double sum, double value) {
                        return sum + value - first;
                    }) / static_cast<double>(y.size());
    std::vector<double> centred(y.size());
    std::transform(y.begin(), y.end(), centred.begin(), [this](double v) { return v - mean_; });
    arrange(centred, factors);
    gather(centred);
}

void ReducedDesign::arrange(const std::vector<double>& y, const std::vector<Factor>& factors)
{
    const auto most =
        std::max_element(factors.begin(), factors.end(),
                         [](const Factor& a, const Factor& b) { return a.levels < b.levels; });
    largest_ = static_cast<std::size_t>(most - factors.begin());
    for (std::size_t f = 0; f < factors.size(); ++f) {
        start_.push_back(factorOf_.size());
        if (f != largest_) {
            factorOf_.insert(factorOf_.end(), static_cast<std::size_t>(factors[f].levels), f);
        }
    }
    size_ = factorOf_.size() + 1;
    factorOf_.push_back(factors.size());

    levels_.resize(static_cast<std::size_t>(factors[largest_].levels));
    for (std::size_t i = 0; i < y.size(); ++i) {
        std::vector<std::size_t> others;
        for (std::size_t f = 0; f < factors.size(); ++f) {
            if (f != largest_) {
                others.push_back(start_[f] + static_cast<std::size_t>(factors[f].level[i]));
            }
        }
        others.push_back(size_ - 1);
        Level& level = levels_[static_cast<std::size_t>(factors[largest_].level[i])];
        ++level.scores;
        level.sum += y[i];
        level.others.insert(level.others.end(), others.begin(), others.end());
        othersOf_.push_back(std::move(others));
    }
}

std::vector<double> ReducedDesign::countsOf(const Level& level) const
{
    std::vector<double> counts(size_);
    for (const std::size_t other : level.others) {
        counts[other] += 1;
    }
    return counts;
}

void ReducedDesign::gather(const std::vector<double>& y)
{
    cross_.resize(size_ * size_);
    pulled_.resize(size_);
    for (std::size_t i = 0; i < y.size(); ++i) {
        squares_ += y[i] * y[i];
        for (const std::size_t a : othersOf_[i]) {
            pulled_[a] += y[i];
            for (const std::size_t b : othersOf_[i]) {
                cross_[a * size_ + b] += 1;
            }
        }
    }
    for (const Level& level : levels_) {
        if (level.scores == 0) {
            continue;
        }
        Group& group = groups_[level.scores];
        group.cross.resize(size_ * size_);
        group.pulled.resize(size_);
        ++group.levels;
        group.squares += level.sum * level.sum;
        const std::vector<double> counts = countsOf(level);
        for (const std::size_t a : level.others) {  // once for each count of a
            group.pulled[a] += level.sum;
            for (std::size_t b = 0; b < size_; ++b) {
                group.cross[a * size_ + b] += counts[b];
            }
        }
    }
}

std::optional<ReducedDesign::Trial> ReducedDesign::trialOf(const std::vector<double>& ratios) const
{
    std::vector<double> matrix = cross_;
    std::vector<double> right = pulled_;
    double squares = squares_;
    double logDeterminant = 0;
    const double variance = ratios[largest_] * ratios[largest_];
    for (const auto& [scores, group] : groups_) {
        // Sherman and Morrison: what a level of so many scores takes up.
        const double taken = variance / (1 + variance * scores);
        logDeterminant += group.levels * std::log1p(variance * scores);
        squares -= taken * group.squares;
        for (std::size_t i = 0; i < right.size(); ++i) {
            right[i] -= taken * group.pulled[i];
        }
        for (std::size_t i = 0; i < matrix.size(); ++i) {
            matrix[i] -= taken * group.cross[i];
        }
    }
    std::vector<double> scale(size_, 1);
    for (std::size_t i = 0; i + 1 < size_; ++i) {
        scale[i] = ratios[factorOf_[i]];
    }
    for (std::size_t i = 0; i < size_; ++i) {
        right[i] *= scale[i];
        for (std::size_t j = 0; j < size_; ++j) {
            matrix[i * size_ + j] *= scale[i] * scale[j];
        }
        matrix[i * size_ + i] += i + 1 < size_ ? 1 : 0;
    }
    std::optional<Cholesky> factor = Cholesky::of(std::move(matrix), size_);
    if (!factor) {
        return std::nullopt;
    }
    std::vector<double> solution = factor->solved(right);
    squares -= std::inner_product(right.begin(), right.end(), solution.begin(), 0.0);
    for (std::size_t i = 0; i < size_; ++i) {
        solution[i] *= scale[i];
    }
    logDeterminant += factor->logDeterminant();
    return Trial{std::move(scale), *std::move(factor), std::move(solution), squares,
                 logDeterminant};
}

double ReducedDesign::criterionOf(const std::vector<double>& ratios) const
{
    const std::optional<Trial> trial = trialOf(ratios);
    // What is left when nearly all is taken away is rounding.
    if (!trial || !(trial->squares > 1e-10 * squares_)) {
        return std::numeric_limits<double>::infinity();
    }
    const auto freedom = static_cast<double>(scores_ - 1);
    return trial->logDeterminant +
           freedom * (1 + std::log(2 * std::numbers::pi * trial->squares / freedom));
}

Components ReducedDesign::componentsAt(const std::vector<double>& ratios) const
{
    const Trial trial = *trialOf(ratios);
    const double variance = trial.squares / static_cast<double>(scores_ - 1);
    Components found;
    found.mean = mean_ + trial.solution.back();
    found.residual = std::sqrt(variance);
    found.criterion = criterionOf(ratios);
    for (const double ratio : ratios) {
        found.deviations.push_back(ratio * found.residual);
    }
    found.effects.resize(ratios.size());
    for (std::size_t i = 0; i + 1 < size_; ++i) {
        found.effects[factorOf_[i]].push_back(trial.solution[i]);
    }
    found.errors = {largest_, start_, size_, trial.factor.inverse(), {}, {}};
    for (std::size_t i = 0; i < size_; ++i) {
        for (std::size_t j = 0; j < size_; ++j) {
            found.errors.covariance[i * size_ + j] *= variance * trial.scale[i] * trial.scale[j];
        }
    }
    addAbsorbed(trial, ratios[largest_], variance, found);
    return found;
}

void ReducedDesign::addAbsorbed(const Trial& trial, double ratio, double variance,
                                Components& found) const
{
    for (const Level& level : levels_) {
        const double relative = ratio * ratio;
        const double taken = relative / (1 + relative * level.scores);
        double rest = level.sum;
        std::vector<double> weights = countsOf(level);
        for (std::size_t i = 0; i < size_; ++i) {
            rest -= weights[i] * trial.solution[i];
            weights[i] *= -taken;
        }
        found.effects[largest_].push_back(taken * rest);
        found.errors.weights.push_back(std::move(weights));
        found.errors.own.push_back(variance * taken);
    }
}

}  // namespace spile::panel
