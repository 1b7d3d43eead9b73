#include "core/outlook/normal.hpp"

#include <array>
#include <cmath>
#include <numbers>

namespace spile::outlook {

namespace {

constexpr double farOut = -25;

// 1 - 1/z^2 + 3/z^4 - ...: normalBelow(z) = normalDensity(z) / -z times this, for z far below 0.
double tail(double z)
{
    const double x = 1 / (z * z);
    return 1 - x * (1 - x * (3 - x * (15 - x * 105)));
}

template <std::size_t n>
double polynomial(const std::array<double, n>& c, double x)
{
    double sum = 0;
    for (const double term : c) {
        sum = sum * x + term;
    }
    return sum;
}

// Relative error below 1.2e-9.
double roughQuantile(double p)
{
    constexpr std::array a = {-3.969683028665376e+01, 2.209460984245205e+02,
                              -2.759285104469687e+02, 1.383577518672690e+02,
                              -3.066479806614716e+01, 2.506628277459239e+00};
    constexpr std::array b = {-5.447609879822406e+01, 1.615858368580409e+02,
                              -1.556989798598866e+02, 6.680131188771972e+01,
                              -1.328068155288572e+01, 1.0};
    constexpr std::array c = {-7.784894002430293e-03, -3.223964580411365e-01,
                              -2.400758277161838e+00, -2.549732539343734e+00,
                              4.374664141464968e+00,  2.938163982698783e+00};
    constexpr std::array d = {7.784695709041462e-03, 3.224671290700398e-01, 2.445134137142996e+00,
                              3.754408661907416e+00, 1.0};
    constexpr double low = 0.02425;
    if (p < low) {
        const double q = std::sqrt(-2 * std::log(p));
        return polynomial(c, q) / polynomial(d, q);
    }
    if (p > 1 - low) {
        const double q = std::sqrt(-2 * std::log1p(-p));
        return -polynomial(c, q) / polynomial(d, q);
    }
    const double q = p - 0.5;
    return polynomial(a, q * q) * q / polynomial(b, q * q);
}

}  // namespace

double normalDensity(double z)
{
    return std::exp(-z * z / 2) * std::numbers::inv_sqrtpi / std::numbers::sqrt2;
}

double normalBelow(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

double quickNormalBelow(double z)
{
    // Cubics through values and slopes; beyond the table less than 1e-14 is left.
    constexpr double reach = 7.75;
    constexpr int perUnit = 64;
    constexpr auto count = static_cast<std::size_t>(2 * reach * perUnit) + 1;
    struct Node {
        double value, slope;
    };
    static const std::array<Node, count> nodes = [] {
        std::array<Node, count> made{};
        for (std::size_t i = 0; i < count; ++i) {
            const double at = static_cast<double>(i) / perUnit - reach;
            made.at(i) = {normalBelow(at), normalDensity(at) / perUnit};
        }
        return made;
    }();
    if (!(z > -reach)) {
        return z <= -reach ? 0 : z;  // NaN stays
    }
    if (z >= reach) {
        return 1;
    }
    const double place = (z + reach) * perUnit;
    const auto i = static_cast<std::size_t>(place);
    const double t = place - static_cast<double>(i);
    const Node& a = nodes[i];
    const Node& b = nodes[i + 1];
    const double rise = b.value - a.value;
    const double third = a.slope + b.slope - 2 * rise;
    return a.value + t * (a.slope + t * (rise - a.slope - third + t * third));
}

double logNormalBelow(double z)
{
    if (z > farOut) {
        return std::log(normalBelow(z));
    }
    constexpr double halfLogTwoPi = 0.91893853320467274178;
    return -z * z / 2 - halfLogTwoPi - std::log(-z) + std::log(tail(z));
}

double millsRatio(double z)
{
    return z > farOut ? normalDensity(z) / normalBelow(z) : -z / tail(z);
}

double normalQuantile(double p)
{
    const double z = roughQuantile(p);
    const double u = (normalBelow(z) - p) / normalDensity(z);
    return z - u / (1 + z * u / 2);
}

}  // namespace spile::outlook
