#pragma once

#include "core/panel/line.hpp"

#include <vector>

namespace spile::outlook {

/// What is known of a level: a mixture of normal distributions, on the 0-10 line.
struct Mixture {
    struct Part {
        double weight = 0;
        double mean = 0;
        double deviation = 0;
    };
    std::vector<Part> parts;  // weights add to 1

    [[nodiscard]] double mean() const;
    [[nodiscard]] double variance() const;
    /// The chance of being at or below `x`.
    [[nodiscard]] double below(double x) const;
    /// The chance of lying in [low, high]. The line ends at 0 and 10: what would lie beyond counts
    /// as lying at its end, so a window from 0 or to 10 has no limit there.
    [[nodiscard]] double within(double low, double high) const;
    /// The chances of lying below, in and above a window; they add to 1.
    struct Sides {
        double below = 0, within = 0, above = 0;
    };
    [[nodiscard]] Sides sides(double low, double high) const;
    /// The level with below(level) = p, to 1e-6. Requires 0 < p < 1 and at least one part.
    [[nodiscard]] double quantile(double p) const;
};

inline constexpr double lineLow = 0;
inline constexpr double lineHigh = panel::lineLength;

}  // namespace spile::outlook
