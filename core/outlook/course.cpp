#include "core/outlook/course.hpp"

#include "core/outlook/course_fit.hpp"
#include "core/outlook/small_matrix.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>

namespace spile::outlook {

namespace {

constexpr double muchReplaced = 0.05;
constexpr double negligible = 1e-9;  // a part's weight below which it is dropped
const double logNegligible = std::log(negligible);

double square(double x) { return x * x; }

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

Course::Course(const CourseModel& model, const CourseData& data) : replaced_(data.replaced)
{
    const bool much = std::any_of(
        replaced_.begin(), replaced_.end(),
        [](const Replaced& top) { return top.fraction > muchReplaced; });
    for (const Shape& shape : shapesOf(model.prior, model.grid)) {
        ShapeNow now{shape, false};
        if (much && model.recovers && shape.family == Family::Saturating) {
            now.shape.logPrior -= std::numbers::ln2;
            shapes_.push_back({now.shape, true});
        }
        shapes_.push_back(now);
    }
    panel_ = model.tasters.panel;
    amounts_ = replaced_.empty() ? 2 : 3;
    dimension_ = amounts_ + panel_.size();
    CourseFit(model, data, *this).run();
}

void Course::levelAt(double age, Mixture& out) const
{
    out.parts.resize(weights_.size());
    std::uint32_t rowOf = std::numeric_limits<std::uint32_t>::max();
    std::array<double, 3> row = {};
    for (std::size_t part = 0; part < weights_.size(); ++part) {
        if (shapeOf_[part] != rowOf) {
            rowOf = shapeOf_[part];
            row = courseRow(shapes_[rowOf].shape, shapes_[rowOf].recovers, replaced_, age);
        }
        const auto direction = [&](std::size_t i) {
            return i < amounts_ ? row[i] : panel_[i - amounts_];
        };
        const double* const mean = &means_[part * dimension_];
        const double* covariance = &covariances_[part * dimension_ * dimension_];
        double level = 0;
        double variance = 0;
        for (std::size_t i = 0; i < dimension_; ++i, covariance += dimension_) {
            const double along = direction(i);
            level += along * mean[i];
            double sum = along * covariance[i] / 2;
            for (std::size_t j = 0; j < i; ++j) {
                sum += direction(j) * covariance[j];
            }
            variance += 2 * along * sum;
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
        sum += weights_[part] * square(noises_[part]);
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

// --- the fit -------------------------------------------------------------------------------------

CourseFit::CourseFit(const CourseModel& model, const CourseData& data, Course& course)
    : model_(model),
      data_(data),
      course_(course),
      amounts_(course.amounts_),
      tasters_(model.tasters.size())
{}

void CourseFit::run()
{
    arrange();
    sumFixed();
    highest_ = -std::numeric_limits<double>::infinity();
    for (std::uint32_t shape = 0; shape < course_.shapes_.size(); ++shape) {
        fitShape(shape);
    }
    finish();
}

// Scores by session; which sessions need a dimension of their own.
void CourseFit::arrange()
{
    const std::size_t n = data_.scores.size();
    sessionOf_.resize(n);
    weight_.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        const Scored& score = data_.scores[i];
        const auto found =
            std::find_if(sessions_.begin(), sessions_.end(),
                         [&](const Session& session) { return session.number == score.session; });
        sessionOf_[i] = static_cast<std::size_t>(found - sessions_.begin());
        if (found == sessions_.end()) {
            sessions_.emplace_back().number = score.session;
        }
        sessions_[sessionOf_[i]].records.push_back(i);
        weight_[i] = 1 / square(model_.tasters.scatter[static_cast<std::size_t>(score.taster)]);
        if (score.isCut()) {
            weight_[i] = 0;
            firstSites_.push_back({i});
        }
        plain_ += score.isCut() ? 0 : 1;
    }
    all_ = amounts_ + tasters_;
    const double shared = square(model_.noise.sessionShare);
    for (Session& session : sessions_) {
        const bool cut = std::any_of(session.records.begin(), session.records.end(),
                                     [&](std::size_t i) { return weight_[i] == 0; });
        session.apart = cut && session.records.size() > 1 && shared > 0;
        session.place = session.apart ? all_++ : 0;
        apart_ += session.apart ? 1 : 0;
        for (const std::size_t i : session.records) {
            session.weight += weight_[i];
        }
        session.shared = session.apart ? 0 : shared / (1 + shared * session.weight);
    }
}

void CourseFit::sumFixed()
{
    const std::size_t d = all_;
    for (auto* matrix : {&fixed_, &cross_, &factor_, &covariance_, &startCovariance_}) {
        matrix->assign(d * d, 0);
    }
    for (auto* vector : {&pull_, &mean_, &startMean_, &row_, &image_, &lean_}) {
        vector->assign(d, 0);
    }
    rows_.assign(data_.scores.size() * 3, 0);
    rest_.assign(data_.scores.size(), 0);
    const auto taster = [&](std::size_t i) {
        return amounts_ + static_cast<std::size_t>(data_.scores[i].taster);
    };
    const double shared = square(model_.noise.sessionShare);
    for (const Session& session : sessions_) {
        for (const std::size_t i : session.records) {
            const double w = weight_[i];
            fixed_[taster(i) * d + taster(i)] += w;
            logNoise_ -= w > 0 ? std::log(w) : 0;
            if (session.apart) {
                fixed_[taster(i) * d + session.place] += w;
                fixed_[session.place * d + taster(i)] += w;
                continue;
            }
            for (const std::size_t j : session.records) {
                fixed_[taster(i) * d + taster(j)] -= session.shared * w * weight_[j];
            }
        }
        if (session.apart) {
            fixed_[session.place * d + session.place] = session.weight + 1 / shared;
            logNoise_ += std::log(shared);  // of the prior of its dimension, in truth
        } else {
            logNoise_ += std::log(1 + shared * session.weight);
        }
    }
    // The tasters' prior.
    priorPrecision_.assign(tasters_ * tasters_, 0);
    std::vector<double> factor = model_.tasters.covariance;
    tasterLogDeterminant_ = factorise(factor, tasters_);
    invertFactor(factor, priorPrecision_, tasters_);
    const std::size_t parts = course_.shapes_.size() *
                              static_cast<std::size_t>(model_.grid.noisePoints) *
                              (model_.wrongs.chance > 0 ? 4U : 1U);
    const std::size_t k = course_.dimension_;
    course_.means_.reserve(parts * k);
    course_.covariances_.reserve(parts * k * k);
    course_.noises_.reserve(parts);
    course_.shapeOf_.reserve(parts);
    logWeights_.reserve(parts);
    suspectOf_.reserve(parts);
}

// The sums that depend on the shape but not on the noise.
void CourseFit::fitShape(std::uint32_t shape)
{
    const auto& now = course_.shapes_[shape];
    const std::size_t d = all_;
    const std::array<double, 3> before = {now.shape.amounts[0].mean, now.shape.amounts[1].mean,
                                          data_.added.mean};
    std::copy(fixed_.begin(), fixed_.end(), cross_.begin());
    std::fill(pull_.begin(), pull_.end(), 0.0);
    restSquares_ = 0;
    for (Session& session : sessions_) {
        std::fill(std::begin(session.rowSum), std::end(session.rowSum), 0.0);
        session.restSum = 0;
        for (const std::size_t i : session.records) {
            const Scored& score = data_.scores[i];
            const auto row = courseRow(now.shape, now.recovers, course_.replaced_, score.age);
            const auto taster = amounts_ + static_cast<std::size_t>(score.taster);
            const double w = weight_[i];
            double rest = score.line - model_.tasters.mean[taster - amounts_];
            for (std::size_t a = 0; a < amounts_; ++a) {
                rows_[i * 3 + a] = row[a];
                rest -= row[a] * before[a];
            }
            rest_[i] = rest;
            for (std::size_t a = 0; a < amounts_; ++a) {
                for (std::size_t b = 0; b <= a; ++b) {
                    cross_[a * d + b] += w * row[a] * row[b];
                }
                cross_[taster * d + a] += w * row[a];
                if (session.apart) {
                    cross_[session.place * d + a] += w * row[a];
                }
                pull_[a] += w * row[a] * rest;
                session.rowSum[a] += w * row[a];
            }
            pull_[taster] += w * rest;
            if (session.apart) {
                pull_[session.place] += w * rest;
            }
            session.restSum += w * rest;
            restSquares_ += w * rest * rest;
        }
        if (session.shared == 0) {
            continue;
        }
        for (std::size_t a = 0; a < amounts_; ++a) {
            const double part = session.shared * session.rowSum[a];
            for (std::size_t b = 0; b <= a; ++b) {
                cross_[a * d + b] -= part * session.rowSum[b];
            }
            for (const std::size_t i : session.records) {
                cross_[(amounts_ + static_cast<std::size_t>(data_.scores[i].taster)) * d + a] -=
                    part * weight_[i];
            }
            pull_[a] -= part * session.restSum;
        }
        for (const std::size_t i : session.records) {
            pull_[amounts_ + static_cast<std::size_t>(data_.scores[i].taster)] -=
                session.shared * weight_[i] * session.restSum;
        }
        restSquares_ -= session.shared * square(session.restSum);
    }
    for (const GridPoint& noise :
         normalGrid(model_.grid.noisePoints, model_.grid.noiseReach)) {
        fitNoise(shape, noise);
    }
}

void CourseFit::fitNoise(std::uint32_t shape, const GridPoint& noise)
{
    const auto& now = course_.shapes_[shape];
    const std::size_t d = all_;
    const double sigma = model_.noise.median * std::exp(noise.z * model_.noise.logDeviation);
    const double scale = 1 / square(sigma);
    double logPrior = tasterLogDeterminant_;
    for (std::size_t i = 0; i < d; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            factor_[i * d + j] = scale * cross_[i * d + j];
        }
    }
    for (std::size_t i = 0; i < tasters_; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            factor_[(amounts_ + i) * d + amounts_ + j] += priorPrecision_[i * tasters_ + j];
        }
    }
    for (std::size_t a = 0; a < amounts_; ++a) {
        const double deviation =
            a < 2 ? now.shape.amounts[a].deviation : data_.added.deviation;
        factor_[a * d + a] += 1 / square(deviation);
        logPrior += 2 * std::log(deviation);
    }
    const double logDeterminant = factorise(factor_, d);
    invertFactor(factor_, covariance_, d);
    for (std::size_t i = 0; i < d; ++i) {
        image_[i] = scale * pull_[i];
    }
    multiply(covariance_, image_, mean_, d);
    const double count = static_cast<double>(plain_);
    const double misfit = scale * restSquares_ - dot(image_, mean_, d);
    const double scales = (count + static_cast<double>(apart_)) * std::log(square(sigma));
    double logWeight = now.shape.logPrior + std::log(noise.weight) -
                       (misfit + scales + logNoise_ + logDeterminant + logPrior +
                        count * std::log(2 * std::numbers::pi)) /
                           2;
    if (!firstSites_.empty()) {
        logWeight += settleCut(sigma);
    }
    keep(shape, logWeight, sigma, {});
    if (model_.wrongs.chance > 0) {
        addWrongs(shape, logWeight, sigma);
    }
}

// What the posterior would be if one score or session had more variance: rank-one changes.
void CourseFit::addWrongs(std::uint32_t shape, double logWeight, double sigma)
{
    const Wrongs& wrongs = model_.wrongs;
    const double oneWrong = logWeight + std::log(wrongs.chance / (1 - wrongs.chance));
    for (const Session& session : sessions_) {
        for (const std::size_t i : session.records) {
            const double w = weight_[i];
            if (w == 0) {
                continue;  // at an end of the line anything may have been meant
            }
            const auto taster = amounts_ + static_cast<std::size_t>(data_.scores[i].taster);
            std::fill(lean_.begin(), lean_.end(), 0.0);
            for (std::size_t a = 0; a < amounts_; ++a) {
                lean_[a] = w * (rows_[i * 3 + a] - session.shared * session.rowSum[a]);
            }
            lean_[taster] += w;
            if (session.apart) {
                lean_[session.place] = w;
            } else {
                for (const std::size_t j : session.records) {
                    lean_[amounts_ + static_cast<std::size_t>(data_.scores[j].taster)] -=
                        w * session.shared * weight_[j];
                }
            }
            addWrong(shape, oneWrong, sigma, wrongs.scoreVariance,
                     w - session.shared * square(w),
                     w * (rest_[i] - session.shared * session.restSum),
                     {Suspect::What::Score, static_cast<int>(i), 0});
        }
        if (session.apart || session.records.size() < 2) {
            continue;
        }
        const double left = 1 - session.shared * session.weight;
        std::fill(lean_.begin(), lean_.end(), 0.0);
        for (std::size_t a = 0; a < amounts_; ++a) {
            lean_[a] = left * session.rowSum[a];
        }
        for (const std::size_t i : session.records) {
            lean_[amounts_ + static_cast<std::size_t>(data_.scores[i].taster)] +=
                left * weight_[i];
        }
        addWrong(shape, oneWrong, sigma, wrongs.sessionVariance, left * session.weight,
                 left * session.restSum, {Suspect::What::Session, session.number, 0});
    }
}

// `own`, `rest` and lean_ are e'N^-1e, e'N^-1r and X'N^-1e times sigma^2, e being what is suspected.
void CourseFit::addWrong(std::uint32_t shape, double logWeight, double sigma, double variance,
                         double own, double rest, Suspect suspect)
{
    const std::size_t d = all_;
    const double scale = 1 / square(sigma);
    multiply(covariance_, lean_, image_, d);
    const double known = scale * own - square(scale) * dot(lean_, image_, d);
    const double surprise = scale * (rest - dot(lean_, mean_, d));
    const double grown = 1 + variance * known;
    const double weight =
        logWeight - (std::log(grown) - variance * square(surprise) / grown) / 2;
    if (weight < highest_ + logNegligible) {
        return;
    }
    const double step = variance / grown;
    std::copy(covariance_.begin(), covariance_.end(), startCovariance_.begin());
    std::copy(mean_.begin(), mean_.end(), startMean_.begin());
    for (std::size_t i = 0; i < d; ++i) {
        mean_[i] -= step * surprise * scale * image_[i];
        for (std::size_t j = 0; j < d; ++j) {
            covariance_[i * d + j] += step * square(scale) * image_[i] * image_[j];
        }
    }
    keep(shape, weight, sigma, suspect);
    covariance_.swap(startCovariance_);
    mean_.swap(startMean_);
}

// Makes the posterior that was just computed a part of the course.
void CourseFit::keep(std::uint32_t shape, double logWeight, double sigma, const Suspect& suspect)
{
    if (logWeight < highest_ + logNegligible || std::isnan(logWeight)) {
        return;
    }
    highest_ = std::max(highest_, logWeight);
    const auto& now = course_.shapes_[shape];
    const std::size_t k = course_.dimension_;
    for (std::size_t i = 0; i < k; ++i) {
        const double before = i < 2          ? now.shape.amounts[i].mean
                              : i < amounts_ ? data_.added.mean
                                             : model_.tasters.mean[i - amounts_];
        course_.means_.push_back(before + mean_[i]);
        for (std::size_t j = 0; j < k; ++j) {
            course_.covariances_.push_back(covariance_[i * all_ + j]);
        }
    }
    course_.shapeOf_.push_back(shape);
    course_.noises_.push_back(sigma);
    logWeights_.push_back(logWeight);
    suspectOf_.push_back(suspect);
}

// Weights that add to 1, the parts that matter, and what is suspected.
void CourseFit::finish()
{
    double sum = 0;
    for (const double weight : logWeights_) {
        sum += std::exp(weight - highest_);
    }
    course_.logEvidence_ = highest_ + std::log(sum);
    const std::size_t k = course_.dimension_;
    std::size_t kept = 0;
    double keptWeight = 0;
    for (std::size_t part = 0; part < logWeights_.size(); ++part) {
        const double weight = std::exp(logWeights_[part] - course_.logEvidence_);
        auto& suspects = course_.suspects_;
        auto found = std::find_if(suspects.begin(), suspects.end(), [&](const Suspect& s) {
            return s.what == suspectOf_[part].what && s.which == suspectOf_[part].which;
        });
        if (found == suspects.end()) {
            found = suspects.insert(found, suspectOf_[part]);
        }
        found->chance += weight;
        if (weight < negligible) {
            continue;
        }
        std::copy_n(&course_.means_[part * k], k, &course_.means_[kept * k]);
        std::copy_n(&course_.covariances_[part * k * k], k * k, &course_.covariances_[kept * k * k]);
        course_.shapeOf_[kept] = course_.shapeOf_[part];
        course_.noises_[kept] = course_.noises_[part];
        course_.weights_.push_back(weight);
        keptWeight += weight;
        ++kept;
    }
    course_.means_.resize(kept * k);
    course_.covariances_.resize(kept * k * k);
    course_.shapeOf_.resize(kept);
    course_.noises_.resize(kept);
    for (double& weight : course_.weights_) {
        weight /= keptWeight;
    }
    std::stable_sort(course_.suspects_.begin(), course_.suspects_.end(),
                     [](const Suspect& a, const Suspect& b) { return a.chance > b.chance; });
}

}  // namespace spile::outlook
