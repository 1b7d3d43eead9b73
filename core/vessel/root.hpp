#pragma once

#include <cmath>

namespace spile::vessel {

/// A rising function's value and its slope at one place.
struct Rise {
    double value, slope;
};

/// Return where `f`, rising on [low, high], is zero: Newton's steps, and a halving of what is left
/// wherever a step would leave it. Ends within a few units of the last digit that f's rounding
/// leaves.
///
/// Requires  f(low) <= 0 <= f(high); `start` within.
template <class Function>
[[nodiscard]] double rootOfRising(double low, double high, double start, const Function& f) noexcept
{
    constexpr int stepsMost = 100;  // halvings alone would need 53, more where the root is tiny
    double at = start;
    for (int i = 0; i < stepsMost; ++i) {
        const Rise here = f(at);
        if (here.value == 0) {
            return at;
        }
        (here.value > 0 ? high : low) = at;
        double next = at - here.value / here.slope;
        if (!(next >= low && next <= high)) {
            next = low + (high - low) / 2;
        }
        if (std::fabs(next - at) <= 4e-16 * std::fabs(next)) {
            return next;
        }
        at = next;
    }
    return at;
}

}  // namespace spile::vessel
