#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"
#include "core/wood/spread.hpp"

#include <cstdint>

/// A barrel's own rate of loss, learnt from its gauges.
namespace spile::wood {

/// The permeance of one barrel's wood as far as it is known: lognormal, in kg/(m2 s Pa) for a stave
/// of 26 mm.
struct LossRate {
    double logMedian{};
    double logSd{};
};

/// The prior of a sound used barrel: the median of permeancePrior and the width of its interval. A
/// lognormal cannot have all three of its numbers, so its own interval is 1.07e-10 to 3.74e-10.
[[nodiscard]] LossRate lossRatePrior();

/// Return a rate as the spread that courses take.
[[nodiscard]] Spread spreadOf(const LossRate& rate);

/// How a volume was found.
enum class GaugeMethod : std::uint8_t { Dip, Weight, Meter, FilledFull };

/// Return one standard deviation of a volume so found in a barrel that holds `full`.
///
/// Range     full above 0.
/// Errors    NotFinite; OutOfRange.
/// Source    meter: half of a percent, as 27 CFR 25.42 allows beer meters; the others, a dip
///           0.75 %, a weight 0.25 % (of the difference, the tare the same), filled full 0.5 %, are
///           common practice.
[[nodiscard]] Result<Volume> readingDeviation(GaugeMethod method, Volume full);

/// What two gauges show beside what was foreseen. Draws, top-ups and soakage are taken off before.
struct LossSeen {
    Volume predicted;  ///< evaporation in the interval at the rate's median; below 0 in humid air
    Volume measured;   ///< below 0 for a gain
    Volume deviation;  ///< one standard deviation of `measured`, of both gauges together
};

/// Return the deviation of the difference of two readings that err apart.
[[nodiscard]] Volume deviationOfLoss(Volume first, Volume second);

/// Return what is known of the rate after one more interval: the most likely rate, and the width
/// that its neighbourhood has there.
///
/// The loss is taken as in proportion to the rate and normal in its error; the rate as lognormal.
/// The answer is never wider than `prior`. A loss further than 2.5 deviations from what was
/// foreseen (the rate's and the reading's together) counts as a reading that much less sure, and no
/// gauge moves the rate by more than 2.5 of its own deviations; a wild one hardly moves it at all.
/// Where the loss is really so, the barrel leaks: see judgeLoss(); its rate follows in several
/// steps.
///
/// Range     |predicted|, |measured| at most 1e3 m3; deviation 1e-9 to 1e3 m3; logSd 0 to 10.
/// Errors    NotFinite; OutOfRange; OutOfRange "measured_loss_m3" for a gain of 4 deviations beyond
///           what was foreseen: something was topped up and not booked, or a gauge is wrong.
/// Limits    Gaussian about the peak (Laplace); a gauge of great precision deserves more.
[[nodiscard]] Result<LossRate> updated(const LossRate& prior, const LossSeen& seen);

/// What a loss says of a barrel.
enum class LossSign : std::uint8_t {
    Usual,
    Watch,  ///< beyond the barrel's own 90 % rate by more than reading error
    Leak,   ///< beyond twice its predicted loss by more than reading error
};

/// A sign with what it saw.
struct LossVerdict {
    LossSign sign = LossSign::Usual;
    Volume predicted;
    Volume measured;
    Volume readingError;  ///< two deviations
    Volume leakAbove;     ///< the loss from which on it is Leak
};

/// Return what a loss says, before the rate learns from it.
///
/// Range     as updated(); a gain is Usual.
/// Errors    NotFinite; OutOfRange.
/// Source    twice its own predicted rate: common practice.
[[nodiscard]] Result<LossVerdict> judgeLoss(const LossRate& rate, const LossSeen& seen);

}  // namespace spile::wood
