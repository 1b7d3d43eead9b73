#pragma once

#include "core/outlook/course.hpp"

#include <array>
#include <cmath>
#include <numbers>
#include <vector>

/// The posterior of a course by another way: each part's state is its amounts, its tasters' biases
/// and its sessions, and the scores are learned one after the other, each as one normal observation
/// (R. E. Kalman 1960; from memory). For exact scores, no top-ups, nothing wrong.
namespace spile::outlook {

struct OneByOne {
    double logEvidence = 0;
    double mean = 0, variance = 0;          // of the level at the age
    std::array<double, families> weight{};  // of the families
};

namespace one_by_one {

struct State {
    std::vector<double> mean;
    std::vector<std::vector<double>> covariance;

    explicit State(std::size_t n) : mean(n, 0), covariance(n, std::vector<double>(n, 0)) {}

    [[nodiscard]] std::vector<double> image(const std::vector<double>& along) const
    {
        std::vector<double> made(mean.size(), 0);
        for (std::size_t i = 0; i < mean.size(); ++i) {
            for (std::size_t j = 0; j < mean.size(); ++j) {
                made[i] += covariance[i][j] * along[j];
            }
        }
        return made;
    }
    // Learns a score; returns the logarithm of its density as it was foreseen.
    double learn(const std::vector<double>& along, double noise, double score)
    {
        const std::vector<double> gain = image(along);
        double variance = noise;
        double rest = score;
        for (std::size_t i = 0; i < mean.size(); ++i) {
            variance += along[i] * gain[i];
            rest -= along[i] * mean[i];
        }
        for (std::size_t i = 0; i < mean.size(); ++i) {
            mean[i] += gain[i] * rest / variance;
            for (std::size_t j = 0; j < mean.size(); ++j) {
                covariance[i][j] -= gain[i] * gain[j] / variance;
            }
        }
        return -(rest * rest / variance + std::log(2 * std::numbers::pi * variance)) / 2;
    }
};

struct Part {
    Family family;
    double logWeight, mean, variance;
};

// `tasters`: how many are in the state; with 0 there are no biases at all.
inline Part partOf(const CourseModel& model, const CourseData& data, const Shape& shape,
                   const GridPoint& noise, std::size_t tasters, double age)
{
    const double sigma = model.noise.median * std::exp(noise.z * model.noise.logDeviation);
    const std::size_t first = 2 + tasters;
    State state(first + data.scores.size());  // room for a session each
    for (std::size_t a = 0; a < 2; ++a) {
        state.mean[a] = shape.amounts.at(a).mean;
        state.covariance[a][a] = shape.amounts.at(a).deviation * shape.amounts.at(a).deviation;
    }
    for (std::size_t i = 0; i < tasters; ++i) {
        state.mean[2 + i] = model.tasters.mean[i];
        for (std::size_t j = 0; j < tasters; ++j) {
            state.covariance[2 + i][2 + j] = model.tasters.covariance[i * model.tasters.size() + j];
        }
    }
    const double share = model.noise.sessionShare * sigma;
    for (std::size_t i = first; i < state.mean.size(); ++i) {
        state.covariance[i][i] = share * share;
    }
    double logWeight = shape.logPrior + std::log(noise.weight);
    std::vector<int> sessions;
    for (const Scored& score : data.scores) {
        std::size_t session = 0;
        while (session < sessions.size() && sessions[session] != score.session) {
            ++session;
        }
        if (session == sessions.size()) {
            sessions.push_back(score.session);
        }
        std::vector<double> along(state.mean.size(), 0);
        const wood::Basis basis = shape.basis(score.age);
        along[0] = basis[0];
        along[1] = basis[1];
        if (tasters > 0) {
            along[2 + static_cast<std::size_t>(score.taster)] = 1;
        }
        along[first + session] = 1;
        const double own = sigma * model.tasters.scatter[static_cast<std::size_t>(score.taster)];
        logWeight += state.learn(along, own * own, score.line);
    }
    std::vector<double> along(state.mean.size(), 0);
    const wood::Basis basis = shape.basis(age);
    along[0] = basis[0];
    along[1] = basis[1];
    for (std::size_t i = 0; i < tasters; ++i) {
        along[2 + i] = model.tasters.panel[i];
    }
    const std::vector<double> image = state.image(along);
    Part part{shape.family, logWeight, 0, 0};
    for (std::size_t i = 0; i < along.size(); ++i) {
        part.mean += along[i] * state.mean[i];
        part.variance += along[i] * image[i];
    }
    return part;
}

}  // namespace one_by_one

inline OneByOne oneByOne(const CourseModel& model, const CourseData& data, std::size_t tasters,
                         double age)
{
    std::vector<one_by_one::Part> parts;
    for (const Shape& shape : shapesOf(model.prior, model.grid)) {
        for (const GridPoint& noise : normalGrid(model.grid.noisePoints, model.grid.noiseReach)) {
            parts.push_back(one_by_one::partOf(model, data, shape, noise, tasters, age));
        }
    }
    double highest = parts.front().logWeight;
    for (const auto& part : parts) {
        highest = std::max(highest, part.logWeight);
    }
    double sum = 0;
    for (const auto& part : parts) {
        sum += std::exp(part.logWeight - highest);
    }
    OneByOne all;
    all.logEvidence = highest + std::log(sum);
    double square = 0;
    for (const auto& part : parts) {
        const double weight = std::exp(part.logWeight - all.logEvidence);
        all.weight.at(static_cast<std::size_t>(part.family)) += weight;
        all.mean += weight * part.mean;
        square += weight * (part.variance + part.mean * part.mean);
    }
    all.variance = square - all.mean * all.mean;
    return all;
}

}  // namespace spile::outlook
