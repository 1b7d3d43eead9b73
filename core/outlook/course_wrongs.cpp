// One score or one session that may be wrong: rank-one changes of a part's posterior.
#include "core/outlook/course_fit.hpp"
#include "core/outlook/small_matrix.hpp"

#include <algorithm>
#include <cmath>

namespace spile::outlook {

void CourseFit::addWrongs(std::uint32_t shape, double logWeight, double sigma)
{
    const double chance = model_.wrongs.chance;
    const double oneWrong = logWeight + std::log(chance / (1 - chance));
    for (const Session& session : sessions_) {
        for (const std::size_t i : session.records) {
            if (weight_[i] != 0) {  // at an end of the line anything may have been meant
                addWrong(shape, oneWrong, sigma, doubtScore(session, i));
            }
        }
        if (!session.apart && session.records.size() > 1) {
            addWrong(shape, oneWrong, sigma, doubtSession(session));
        }
    }
}

CourseFit::Doubt CourseFit::doubtScore(const Session& session, std::size_t record)
{
    const double w = weight_[record];
    std::fill(lean_.begin(), lean_.end(), 0.0);
    for (std::size_t a = 0; a < amounts_; ++a) {
        lean_[a] = w * (rows_[record * 3 + a] - session.shared * session.rowSum[a]);
    }
    lean_[tasterPlace(record)] += w;
    if (session.apart) {
        lean_[session.place] = w;
    } else {
        for (const std::size_t other : session.records) {
            lean_[tasterPlace(other)] -= w * session.shared * weight_[other];
        }
    }
    return {{Suspect::What::Score, static_cast<int>(record), 0},
            model_.wrongs.scoreVariance,
            w - session.shared * square(w),
            w * (rest_[record] - session.shared * session.restSum)};
}

CourseFit::Doubt CourseFit::doubtSession(const Session& session)
{
    const double left = 1 - session.shared * session.weight;
    std::fill(lean_.begin(), lean_.end(), 0.0);
    for (std::size_t a = 0; a < amounts_; ++a) {
        lean_[a] = left * session.rowSum[a];
    }
    for (const std::size_t i : session.records) {
        lean_[tasterPlace(i)] += left * weight_[i];
    }
    return {{Suspect::What::Session, session.number, 0},
            model_.wrongs.sessionVariance,
            left * session.weight,
            left * session.restSum};
}

void CourseFit::addWrong(std::uint32_t shape, double logWeight, double sigma, const Doubt& doubt)
{
    const std::size_t d = all_;
    const double scale = 1 / square(sigma);
    multiply(covariance_, lean_, image_, d);
    const double known = scale * doubt.own - square(scale) * dot(lean_, image_, d);
    const double surprise = scale * (doubt.rest - dot(lean_, mean_, d));
    const double grown = 1 + doubt.variance * known;
    const double weight =
        logWeight - (std::log(grown) - doubt.variance * square(surprise) / grown) / 2;
    if (isNegligible(weight)) {
        return;
    }
    const double step = doubt.variance / grown;
    std::copy(covariance_.begin(), covariance_.end(), startCovariance_.begin());
    std::copy(mean_.begin(), mean_.end(), startMean_.begin());
    for (std::size_t i = 0; i < d; ++i) {
        mean_[i] -= step * surprise * scale * image_[i];
        for (std::size_t j = 0; j < d; ++j) {
            covariance_[i * d + j] += step * square(scale) * image_[i] * image_[j];
        }
    }
    keep(shape, weight, sigma, doubt.suspect);
    covariance_.swap(startCovariance_);
    mean_.swap(startMean_);
}

}  // namespace spile::outlook
