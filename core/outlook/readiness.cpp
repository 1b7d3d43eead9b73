#include "core/outlook/readiness.hpp"

#include <algorithm>

namespace spile::outlook {

LineWindow windowOfScores(int low, int high)
{
    constexpr double half = panel::pointsPerStep / 2;
    return {low <= panel::lowestScore ? lineLow : panel::lineOf(low) - half,
            high >= panel::highestScore ? lineHigh : panel::lineOf(high) + half};
}

Together together(std::span<const Standing> standings, std::span<const bool> rising)
{
    Together all;
    double smallest = 1;
    double notPast = 1;
    for (std::size_t i = 0; i < standings.size(); ++i) {
        const Mixture::Sides& sides = standings[i].sides;
        all.within *= sides.within;
        all.entered *= 1 - (rising[i] ? sides.below : sides.above);
        notPast *= 1 - (rising[i] ? sides.above : sides.below);
        if (sides.within < smallest) {
            smallest = sides.within;
            all.weakest = i;
        }
    }
    all.past = 1 - notPast;
    return all;
}

Span bestSpan(std::span<const double> chances, double share)
{
    Span span;
    if (chances.empty()) {
        return span;
    }
    span.best = static_cast<std::size_t>(std::max_element(chances.begin(), chances.end()) -
                                         chances.begin());
    const double least = share * chances[span.best];
    span.from = span.best;
    while (span.from > 0 && chances[span.from - 1] >= least) {
        --span.from;
    }
    span.to = span.best;
    while (span.to + 1 < chances.size() && chances[span.to + 1] >= least) {
        ++span.to;
    }
    return span;
}

std::optional<double> entryAt(std::span<const double> ages, std::span<const double> notThere,
                              double p)
{
    for (std::size_t i = 0; i < ages.size(); ++i) {
        if (1 - notThere[i] >= p) {
            return ages[i];
        }
    }
    return std::nullopt;
}

}  // namespace spile::outlook
