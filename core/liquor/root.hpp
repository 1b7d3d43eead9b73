#pragma once

#include <cmath>

namespace spile::liquor {

/// A function's value and its slope at one place.
struct ValueAndSlope {
    double value;
    double slope;
};

/// Return where `f`, strictly rising or strictly falling on [low, high], is zero: Newton's steps,
/// and a halving of what is left wherever a step would leave it.
///
/// Requires  f(low) and f(high) differ in sign or one of them is zero; `start` within.
/// Accuracy  the last step is at most 1e-13 of the answer or 1e-14 of the range; with f's own slope
///           each step squares what is missing, so that only f's rounding is left.
template <class Function>
[[nodiscard]] double rootBetween(double low, double high, double start, const Function& f) noexcept
{
    constexpr int stepsMost = 80;  // halvings alone would need 53
    const double leastStep = 1e-14 * (high - low);
    double at = start;
    for (int i = 0; i < stepsMost; ++i) {
        const ValueAndSlope here = f(at);
        if (here.value == 0) {
            return at;
        }
        // Beyond the zero in the direction in which f rises: the zero lies below.
        ((here.value > 0) == (here.slope > 0) ? high : low) = at;
        double next = at - here.value / here.slope;
        if (!(next >= low && next <= high)) {
            next = low + (high - low) / 2;
        }
        if (std::fabs(next - at) <= std::fmax(leastStep, 1e-13 * std::fabs(next))) {
            return next;
        }
        at = next;
    }
    return at;
}

}  // namespace spile::liquor
