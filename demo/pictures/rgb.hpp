#pragma once

#include <algorithm>

namespace spile::demo {

/// Linear light, or the share of it that a surface gives back, in three broad bands.
struct Rgb {
    double r = 0.0;
    double g = 0.0;
    double b = 0.0;

    friend constexpr Rgb operator+(Rgb p, Rgb q) { return {p.r + q.r, p.g + q.g, p.b + q.b}; }
    friend constexpr Rgb operator*(Rgb p, Rgb q) { return {p.r * q.r, p.g * q.g, p.b * q.b}; }
    friend constexpr Rgb operator*(double k, Rgb p) { return {k * p.r, k * p.g, k * p.b}; }
};

[[nodiscard]] constexpr double mix(double a, double b, double share) { return a + share * (b - a); }
[[nodiscard]] constexpr Rgb mix(Rgb a, Rgb b, double share)
{
    return (1.0 - share) * a + share * b;
}

/// Return 0 below `from`, 1 above `to`, and a smooth step between. Requires from < to.
[[nodiscard]] constexpr double ramp(double from, double to, double x)
{
    const double t = std::clamp((x - from) / (to - from), 0.0, 1.0);
    return t * t * (3.0 - 2.0 * t);
}

}  // namespace spile::demo
