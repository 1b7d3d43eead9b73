#include "core/wood/loss_rate.hpp"

#include "core/units/checks.hpp"
#include "core/wood/evaporation.hpp"

#include <algorithm>
#include <cmath>

namespace spile::wood {

namespace {

constexpr double mostVolume = 1e3;  // m3
constexpr double leastDeviation = 1e-9;
constexpr double robustReach = 2.5;
constexpr double gainReach = 4;
constexpr double signReach = 2;

Result<void> needRate(const LossRate& rate)
{
    SPILE_TRY(needBetween("log_median", rate.logMedian, -100.0, 100.0));
    return needBetween("log_deviation", rate.logSd, 0.0, 10.0);
}

Result<void> needSeen(const LossSeen& seen)
{
    SPILE_TRY(needBetween("predicted_loss_m3", seen.predicted.si(), -mostVolume, mostVolume));
    SPILE_TRY(needBetween("measured_loss_m3", seen.measured.si(), -mostVolume, mostVolume));
    return needBetween("loss_deviation_m3", seen.deviation.si(), leastDeviation, mostVolume);
}

// The square of the deviation that the reading is given, so that the miss is never beyond the
// reach.
double trustedVariance(double miss, double reading, double foreseen)
{
    const double enough = miss * miss / (robustReach * robustReach);
    return std::max(reading, enough - foreseen);
}

// Where the sum of both squares is least, in deviations of the prior: predicted exp(s z) against
// measured, and z against 0; within the reach on either side.
double mostLikely(double predicted, double measured, double variance, double s)
{
    const auto slope = [&](double z) {
        const double loss = predicted * std::exp(s * z);
        return z - s * loss * (measured - loss) / variance;
    };
    const bool isMore = measured > predicted;
    double low = isMore ? 0 : -robustReach;
    double high = isMore ? std::min(robustReach, std::log(measured / predicted) / s) : 0;
    constexpr int halvings = 60;
    for (int i = 0; i < halvings; ++i) {
        const double middle = low + (high - low) / 2;
        (slope(middle) < 0 ? low : high) = middle;
    }
    return low + (high - low) / 2;
}

}  // namespace

LossRate lossRatePrior()
{
    return {std::log(permeancePrior.median),
            std::log(permeancePrior.high / permeancePrior.low) / (2.0 * spreadReach)};
}

Spread spreadOf(const LossRate& rate)
{
    const double reach = spreadReach * rate.logSd;
    return {std::exp(rate.logMedian - reach), std::exp(rate.logMedian),
            std::exp(rate.logMedian + reach)};
}

Result<Volume> readingDeviation(GaugeMethod method, Volume full)
{
    SPILE_TRY(needPositive("full_m3", full.si()));
    switch (method) {
        case GaugeMethod::Dip:
            return 0.0075 * full;
        case GaugeMethod::Weight:
            return 0.0025 * full;
        case GaugeMethod::Meter:
        case GaugeMethod::FilledFull:
            return 0.005 * full;
    }
    return fail(ErrorCode::OutOfRange, "gauge_method");
}

Volume deviationOfLoss(Volume first, Volume second)
{
    return cubicMetres(std::hypot(first.si(), second.si()));
}

Result<LossRate> updated(const LossRate& prior, const LossSeen& seen)
{
    SPILE_TRY(needRate(prior));
    SPILE_TRY(needSeen(seen));
    double predicted = seen.predicted.si();
    double measured = seen.measured.si();
    const double deviation = seen.deviation.si();
    if (measured < std::min(predicted, 0.0) - gainReach * deviation) {
        return fail(ErrorCode::OutOfRange, "measured_loss_m3", std::to_string(measured),
                    "a gain within reading error; book top-ups first");
    }
    if (predicted == 0 || prior.logSd == 0) {
        return prior;  // nothing leaves at any rate, or nothing can be learnt
    }
    if (predicted < 0) {  // a gain foreseen teaches just as a loss does
        predicted = -predicted;
        measured = -measured;
    }
    const double s = prior.logSd;
    const double foreseen = s * s * predicted * predicted;
    const double variance = trustedVariance(measured - predicted, deviation * deviation, foreseen);
    const double z = mostLikely(predicted, measured, variance, s);
    const double slope = predicted * std::exp(s * z);
    // 1 / (1 / s^2 + slope^2 / variance), which is s^2 at most.
    const double width = s / std::sqrt(1.0 + s * s * slope * slope / variance);
    return LossRate{prior.logMedian + s * z, width};
}

Result<LossVerdict> judgeLoss(const LossRate& rate, const LossSeen& seen)
{
    SPILE_TRY(needRate(rate));
    SPILE_TRY(needSeen(seen));
    const Volume readingError = signReach * seen.deviation;
    const double predicted = std::max(seen.predicted.si(), 0.0);
    const double watchFactor = std::min(2.0, std::exp(spreadReach * rate.logSd));
    LossVerdict verdict{LossSign::Usual, seen.predicted, seen.measured, readingError,
                        cubicMetres(2.0 * predicted) + readingError};
    if (seen.measured > verdict.leakAbove) {
        verdict.sign = LossSign::Leak;
    } else if (seen.measured > cubicMetres(watchFactor * predicted) + readingError) {
        verdict.sign = LossSign::Watch;
    }
    return verdict;
}

}  // namespace spile::wood
