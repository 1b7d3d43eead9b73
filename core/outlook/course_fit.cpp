#include "core/outlook/course_fit.hpp"

#include "core/outlook/small_matrix.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace spile::outlook {

namespace {

constexpr double muchReplaced = 0.05;
constexpr double negligible = 1e-8;  // a part's weight below which it is dropped
const double logNegligible = std::log(negligible);

}  // namespace

Course::Course(const CourseModel& model, const CourseData& data) : replaced_(data.replaced)
{
    const bool much = std::any_of(replaced_.begin(), replaced_.end(),
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

CourseFit::CourseFit(const CourseModel& model, const CourseData& data, Course& course)
    : model_(model),
      data_(data),
      course_(course),
      amounts_(course.amounts_),
      tasters_(model.tasters.size()),
      noises_(normalGrid(model.grid.noisePoints, model.grid.noiseReach))
{
}

double CourseFit::amountMean(const Shape& shape, std::size_t amount) const
{
    return amount < 2 ? shape.amounts.at(amount).mean : data_.added.mean;
}

bool CourseFit::isNegligible(double logWeight) const
{
    return logWeight < highest_ + logNegligible;
}

void CourseFit::run()
{
    arrange();
    makeRoom();
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
        plain_ += score.isCut() ? 0U : 1U;
    }
    all_ = amounts_ + tasters_;
    for (Session& session : sessions_) {
        arrange(session);
    }
}

void CourseFit::arrange(Session& session)
{
    const double shared = square(model_.noise.sessionShare);
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

void CourseFit::makeRoom()
{
    for (auto* matrix : {&fixed_, &cross_, &factor_, &covariance_, &startCovariance_}) {
        matrix->assign(all_ * all_, 0);
    }
    for (auto* vector : {&pull_, &mean_, &startMean_, &row_, &image_, &lean_}) {
        vector->assign(all_, 0);
    }
    rows_.assign(data_.scores.size() * 3, 0);
    rest_.assign(data_.scores.size(), 0);
    const std::size_t parts =
        course_.shapes_.size() * noises_.size() * (model_.wrongs.chance > 0 ? 4U : 1U);
    const std::size_t k = course_.dimension_;
    course_.weights_.reserve(parts);
    course_.means_.reserve(parts * k);
    course_.covariances_.reserve(parts * k * k);
    course_.noises_.reserve(parts);
    course_.shapeOf_.reserve(parts);
    logWeights_.reserve(parts);
    suspectOf_.reserve(parts);
}

// The sums that no shape changes: of the tasters and of sessions with a dimension of their own.
void CourseFit::sumFixed()
{
    const std::size_t d = all_;
    const double shared = square(model_.noise.sessionShare);
    for (const Session& session : sessions_) {
        for (const std::size_t i : session.records) {
            sumFixed(session, i);
        }
        if (session.apart) {
            fixed_[session.place * d + session.place] = session.weight + 1 / shared;
            logNoise_ += std::log(shared);  // of the prior of its dimension, in truth
        } else {
            logNoise_ += std::log(1 + shared * session.weight);
        }
    }
    priorPrecision_.assign(tasters_ * tasters_, 0);
    std::vector<double> factor = model_.tasters.covariance;
    tasterLogDeterminant_ = factorise(factor, tasters_);
    invertFactor(factor, priorPrecision_, tasters_);
}

void CourseFit::sumFixed(const Session& session, std::size_t record)
{
    const std::size_t taster = tasterPlace(record);
    const double w = weight_[record];
    fixed_[taster * all_ + taster] += w;
    logNoise_ -= w > 0 ? std::log(w) : 0;
    if (session.apart) {
        fixed_[taster * all_ + session.place] += w;
        fixed_[session.place * all_ + taster] += w;
        return;
    }
    for (const std::size_t other : session.records) {
        fixed_[taster * all_ + tasterPlace(other)] -= session.shared * w * weight_[other];
    }
}

// The sums that depend on the shape but not on the noise.
void CourseFit::fitShape(std::uint32_t shape)
{
    std::copy(fixed_.begin(), fixed_.end(), cross_.begin());
    std::fill(pull_.begin(), pull_.end(), 0.0);
    restSquares_ = 0;
    for (Session& session : sessions_) {
        std::fill(std::begin(session.rowSum), std::end(session.rowSum), 0.0);
        session.restSum = 0;
        for (const std::size_t i : session.records) {
            sumScore(course_.shapes_[shape], session, i);
        }
        if (session.shared != 0) {
            takeShared(session);
        }
    }
    for (const GridPoint& noise : noises_) {
        fitNoise(shape, noise);
    }
}

void CourseFit::sumScore(const Course::ShapeNow& now, Session& session, std::size_t record)
{
    const std::size_t d = all_;
    const Scored& score = data_.scores[record];
    const auto row = courseRow(now.shape, now.recovers, course_.replaced_, score.age);
    const std::size_t taster = tasterPlace(record);
    const double w = weight_[record];
    double rest = score.line - model_.tasters.mean[taster - amounts_];
    for (std::size_t a = 0; a < amounts_; ++a) {
        rows_[record * 3 + a] = row[a];
        rest -= row[a] * amountMean(now.shape, a);
    }
    rest_[record] = rest;
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

// What a session's scores share tells nothing of its own: the inverse of their noise, by Sherman
// and Morrison.
void CourseFit::takeShared(const Session& session)
{
    const std::size_t d = all_;
    for (std::size_t a = 0; a < amounts_; ++a) {
        const double part = session.shared * session.rowSum[a];
        for (std::size_t b = 0; b <= a; ++b) {
            cross_[a * d + b] -= part * session.rowSum[b];
        }
        for (const std::size_t i : session.records) {
            cross_[tasterPlace(i) * d + a] -= part * weight_[i];
        }
        pull_[a] -= part * session.restSum;
    }
    for (const std::size_t i : session.records) {
        pull_[tasterPlace(i)] -= session.shared * weight_[i] * session.restSum;
    }
    restSquares_ -= session.shared * square(session.restSum);
}

// The posterior's precision into factor_; returns the logarithm of the prior's determinant.
double CourseFit::sumPrecision(const Shape& shape, double scale)
{
    const std::size_t d = all_;
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
        const double deviation = a < 2 ? shape.amounts.at(a).deviation : data_.added.deviation;
        factor_[a * d + a] += 1 / square(deviation);
        logPrior += 2 * std::log(deviation);
    }
    return logPrior;
}

void CourseFit::fitNoise(std::uint32_t shape, const GridPoint& noise)
{
    const Shape& now = course_.shapes_[shape].shape;
    const std::size_t d = all_;
    const double sigma = model_.noise.median * std::exp(noise.z * model_.noise.logDeviation);
    const double scale = 1 / square(sigma);
    const double logPrior = sumPrecision(now, scale);
    const double logDeterminant = factorise(factor_, d);
    invertFactor(factor_, covariance_, d);
    for (std::size_t i = 0; i < d; ++i) {
        image_[i] = scale * pull_[i];
    }
    multiply(covariance_, image_, mean_, d);
    const auto count = static_cast<double>(plain_);
    const double misfit = scale * restSquares_ - dot(image_, mean_, d);
    const double scales = (count + static_cast<double>(apart_)) * std::log(square(sigma));
    double logWeight = now.logPrior + std::log(noise.weight) -
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

// Makes the posterior that was just computed a part of the course.
void CourseFit::keep(std::uint32_t shape, double logWeight, double sigma, const Suspect& suspect)
{
    if (isNegligible(logWeight) || std::isnan(logWeight)) {
        return;
    }
    highest_ = std::max(highest_, logWeight);
    const Shape& now = course_.shapes_[shape].shape;
    const std::size_t k = course_.dimension_;
    for (std::size_t i = 0; i < k; ++i) {
        const double before = i < amounts_ ? amountMean(now, i) : model_.tasters.mean[i - amounts_];
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
    std::size_t kept = 0;
    double keptWeight = 0;
    for (std::size_t part = 0; part < logWeights_.size(); ++part) {
        const double weight = std::exp(logWeights_[part] - course_.logEvidence_);
        suspect(suspectOf_[part], weight);
        if (weight >= negligible) {
            move(part, kept++);
            course_.weights_.push_back(weight);
            keptWeight += weight;
        }
    }
    const std::size_t k = course_.dimension_;
    course_.means_.resize(kept * k);
    course_.covariances_.resize(kept * k * k);
    course_.shapeOf_.resize(kept);
    course_.noises_.resize(kept);
    for (double& weight : course_.weights_) {
        weight /= keptWeight;
    }
    course_.collapse();
    std::stable_sort(course_.suspects_.begin(), course_.suspects_.end(),
                     [](const Suspect& a, const Suspect& b) { return a.chance > b.chance; });
}

void CourseFit::suspect(const Suspect& suspect, double chance)
{
    auto& suspects = course_.suspects_;
    auto found = std::find_if(suspects.begin(), suspects.end(), [&](const Suspect& other) {
        return other.what == suspect.what && other.which == suspect.which;
    });
    if (found == suspects.end()) {
        found = suspects.insert(found, suspect);
    }
    found->chance += chance;
}

void CourseFit::move(std::size_t from, std::size_t to)
{
    const std::size_t k = course_.dimension_;
    std::copy_n(&course_.means_[from * k], k, &course_.means_[to * k]);
    std::copy_n(&course_.covariances_[from * k * k], k * k, &course_.covariances_[to * k * k]);
    course_.shapeOf_[to] = course_.shapeOf_[from];
    course_.noises_[to] = course_.noises_[from];
}

}  // namespace spile::outlook
