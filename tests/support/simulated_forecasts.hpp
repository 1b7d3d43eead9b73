#pragma once

#include "tests/support/simulated_barrels.hpp"

#include <array>
#include <cstdint>

/// How well the outlook foresees simulated barrels, beside what a brewer would say without it. The
/// tests set bars on these numbers; tests/bench/outlook_tables prints them.
namespace spile::test {

/// How far ahead of the last sitting, in months.
inline constexpr std::array monthsAhead = {0.0, 1.0, 3.0, 6.0};
inline constexpr std::size_t threeMonths = 2;  // its place

/// Where true levels lie in what was foreseen of them.
struct Calibration {
    static constexpr std::size_t bins = 20;
    double inside50 = 0, inside80 = 0, inside95 = 0;  // shares of the barrels
    std::array<int, bins> counts = {};                // by the foreseen chance of lying below

    /// Pearson's statistic of the counts against all being as likely; bins - 1 degrees of freedom.
    [[nodiscard]] double chiSquare() const;
};
using Horizons = std::array<Calibration, monthsAhead.size()>;

/// Barrels under the model: drawn from its own prior, 1 to 4 tasters, 0 to 8 sittings.
[[nodiscard]] Horizons calibrate(int barrels, std::uint64_t seed);

/// Barrels of one truth, 2 to 4 tasters, 3 to 8 sittings: how often they lie in the 95 % interval,
/// and the root mean square error in points three months ahead.
struct TruthErrors {
    Horizons horizons;
    double outlook = 0;
    double lastValue = 0;  // the mean of the last sitting, as if nothing changed
    double line = 0;       // a straight line through the means of the sittings
};
[[nodiscard]] TruthErrors foresee(Truth truth, int barrels, std::uint64_t seed);

/// When a level that rises comes to 4.5: the median error in months, of barrels that come to it
/// within 18 months after their last sitting. Who gives no date counts as saying 18 months.
struct DateErrors {
    double outlook = 0, lastValue = 0, lastTwo = 0, line = 0;
    double inside80 = 0;  // how often the outlook's 80 % interval holds the date
};
/// `mixed`: all truths but the top-up that nobody wrote down, else the saturating one.
[[nodiscard]] DateErrors readyDates(bool mixed, int sittings, int barrels, std::uint64_t seed);

}  // namespace spile::test
