#include "core/outlook/course.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace spile::outlook {

namespace {

std::array<double, 3> recoveringRow(const Shape& shape, std::span<const Replaced> replaced,
                                    double age)
{
    std::array<double, 3> row = {1, 0, 0};
    double from = 0;
    const auto goTo = [&](double to) {
        const double kept = wood::saturatingBasis(shape.first, to - from)[0];
        row = {row[0] * kept, 1 - (1 - row[1]) * kept, row[2] * kept};
        // The end's share is what none of the others has.
        from = to;
    };
    for (const Replaced& top : replaced) {
        if (top.age >= age) {
            break;
        }
        goTo(top.age);
        const double left = 1 - top.fraction;
        row = {left * row[0], left * row[1], left * row[2] + top.fraction};
    }
    goTo(std::max(age, from));
    return row;
}

}  // namespace

TasterBelief unknownTasters(std::size_t tasters, double variance)
{
    TasterBelief belief;
    belief.mean.assign(tasters, 0);
    belief.covariance.assign(tasters * tasters, 0);
    for (std::size_t i = 0; i < tasters; ++i) {
        belief.covariance[i * tasters + i] = variance;
    }
    belief.scatter.assign(tasters, 1);
    belief.panel.assign(tasters, 1.0 / static_cast<double>(tasters));
    return belief;
}

std::array<double, 3> courseRow(const Shape& shape, bool recovers,
                                std::span<const Replaced> replaced, double age)
{
    if (recovers && shape.family == Family::Saturating) {
        return recoveringRow(shape, replaced, age);
    }
    std::array<double, 3> off = {};
    for (const Replaced& top : replaced) {
        if (top.age >= age) {
            break;
        }
        const wood::Basis then = shape.basis(top.age);
        const double left = 1 - top.fraction;
        off = {left * (then[0] + off[0]) - then[0], left * (then[1] + off[1]) - then[1],
               left * off[2] + top.fraction};
    }
    const wood::Basis now = shape.basis(age);
    return {now[0] + off[0], now[1] + off[1], off[2]};
}

// The panel's mean bias stands for all tasters: what a level is made from is then small.
void Course::collapse()
{
    const std::size_t k = amounts_ + 1;
    slim_.assign(weights_.size() * (k + k * k), 0);
    for (std::size_t part = 0; part < weights_.size(); ++part) {
        const double* const mean = &means_[part * dimension_];
        const double* const spread = &covariances_[part * dimension_ * dimension_];
        double* const slimMean = &slim_[part * (k + k * k)];
        double* const slimSpread = slimMean + k;
        const auto place = [&](std::size_t i) { return std::min(i, amounts_); };
        const auto share = [&](std::size_t i) { return i < amounts_ ? 1 : panel_[i - amounts_]; };
        for (std::size_t i = 0; i < dimension_; ++i) {
            slimMean[place(i)] += share(i) * mean[i];
            for (std::size_t j = 0; j < dimension_; ++j) {
                slimSpread[place(i) * k + place(j)] +=
                    share(i) * share(j) * spread[i * dimension_ + j];
            }
        }
    }
}

void Course::levelAt(double age, Mixture& out) const
{
    constexpr std::size_t most = 4;
    const std::size_t k = amounts_ + 1;
    out.parts.resize(weights_.size());
    std::uint32_t rowOf = std::numeric_limits<std::uint32_t>::max();
    std::array<double, most> along = {};
    for (std::size_t part = 0; part < weights_.size(); ++part) {
        if (shapeOf_[part] != rowOf) {
            rowOf = shapeOf_[part];
            const auto row =
                courseRow(shapes_[rowOf].shape, shapes_[rowOf].recovers, replaced_, age);
            std::copy_n(row.begin(), amounts_, along.begin());
            along[amounts_] = 1;
        }
        const double* const mean = &slim_[part * (k + k * k)];
        const double* spread = mean + k;
        double level = 0;
        double variance = 0;
        for (std::size_t i = 0; i < k; ++i, spread += k) {
            level += along[i] * mean[i];
            double sum = 0;
            for (std::size_t j = 0; j < k; ++j) {
                sum += along[j] * spread[j];
            }
            variance += along[i] * sum;
        }
        out.parts[part] = {weights_[part], level,
                           std::sqrt(std::max(variance, std::numeric_limits<double>::min()))};
    }
}

Mixture Course::levelAt(double age) const
{
    Mixture level;
    levelAt(age, level);
    return level;
}

double Course::familyWeight(Family family) const
{
    double sum = 0;
    for (std::size_t part = 0; part < weights_.size(); ++part) {
        sum += shapes_[shapeOf_[part]].shape.family == family ? weights_[part] : 0;
    }
    return sum;
}

double Course::noiseVariance() const
{
    double sum = 0;
    for (std::size_t part = 0; part < weights_.size(); ++part) {
        sum += weights_[part] * (noises_[part] * noises_[part]);
    }
    return sum;
}

void Course::tasters(std::span<double> mean, std::span<double> covariance) const
{
    const std::size_t n = panel_.size();
    std::fill_n(mean.begin(), n, 0.0);
    std::fill_n(covariance.begin(), n * n, 0.0);
    for (std::size_t part = 0; part < weights_.size(); ++part) {
        const double* const own = &means_[part * dimension_ + amounts_];
        for (std::size_t i = 0; i < n; ++i) {
            mean[i] += weights_[part] * own[i];
        }
    }
    for (std::size_t part = 0; part < weights_.size(); ++part) {
        const double* const own = &means_[part * dimension_ + amounts_];
        const double* const spread = &covariances_[part * dimension_ * dimension_];
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t j = 0; j < n; ++j) {
                covariance[i * n + j] +=
                    weights_[part] * (spread[(amounts_ + i) * dimension_ + amounts_ + j] +
                                      (own[i] - mean[i]) * (own[j] - mean[j]));
            }
        }
    }
}

Belief Course::saturatingMoment(std::size_t amount) const
{
    double weight = 0;
    double first = 0;
    double second = 0;
    for (std::size_t part = 0; part < weights_.size(); ++part) {
        const ShapeNow& now = shapes_[shapeOf_[part]];
        if (now.shape.family != Family::Saturating) {
            continue;
        }
        const bool rate = amount == 2;
        const double mean = rate ? std::log(now.shape.first) : means_[part * dimension_ + amount];
        const double spread =
            rate ? 0 : covariances_[(part * dimension_ + amount) * dimension_ + amount];
        weight += weights_[part];
        first += weights_[part] * mean;
        second += weights_[part] * (spread + mean * mean);
    }
    const double mean = first / weight;
    return {mean, std::sqrt(std::max(0.0, second / weight - mean * mean))};
}

}  // namespace spile::outlook
