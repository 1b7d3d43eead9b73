#include "core/outlook/teaching.hpp"

#include "core/outlook/normal.hpp"

#include <algorithm>
#include <cmath>

namespace spile::outlook {

namespace {

constexpr int steps = 20;  // of half a point
constexpr int narrowest = 2;
constexpr double answerError = 0.8;
constexpr double usualMiddle = 5;
constexpr double middleSpread = 3;
constexpr double usualWidth = 3;
constexpr double widthSpread = 1.5;
constexpr double leastChance = 1e-6;  // a slip of the finger is always possible

double logPrior(double low, double high)
{
    const double middle = ((low + high) / 2 - usualMiddle) / middleSpread;
    const double width = (high - low - usualWidth) / widthSpread;
    return -(middle * middle + width * width) / 2;
}

double logChance(const Wished& wished, double low, double high)
{
    const double error = std::hypot(wished.deviation, answerError);
    const double more = normalBelow((low - wished.level) / error);
    const double less = normalBelow((wished.level - high) / error);
    const double chance = wished.wish == Wish::More      ? more
                          : wished.wish == Wish::TooMuch ? less
                                                         : 1 - more - less;
    return std::log(std::max(chance, leastChance));
}

}  // namespace

std::optional<TaughtWindow> windowTaughtBy(std::span<const Wished> wishes)
{
    const bool right = std::any_of(wishes.begin(), wishes.end(),
                                   [](const Wished& w) { return w.wish == Wish::Right; });
    if (!right && wishes.size() < 2) {
        return std::nullopt;
    }
    double sum = 0;
    double lows = 0;
    double highs = 0;
    for (int from = 0; from <= steps - narrowest; ++from) {
        for (int to = from + narrowest; to <= steps; ++to) {
            const double low = lineHigh * from / steps;
            const double high = lineHigh * to / steps;
            double weight = logPrior(low, high);
            for (const Wished& wished : wishes) {
                weight += logChance(wished, low, high);
            }
            weight = std::exp(weight);
            sum += weight;
            lows += weight * low;
            highs += weight * high;
        }
    }
    if (!(sum > 0)) {
        return std::nullopt;
    }
    return TaughtWindow{{lows / sum, highs / sum}, static_cast<int>(wishes.size())};
}

}  // namespace spile::outlook
