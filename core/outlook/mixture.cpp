#include "core/outlook/mixture.hpp"

#include "core/outlook/normal.hpp"

#include <algorithm>
#include <cmath>

namespace spile::outlook {

double Mixture::mean() const
{
    double sum = 0;
    for (const Part& part : parts) {
        sum += part.weight * part.mean;
    }
    return sum;
}

double Mixture::variance() const
{
    const double middle = mean();
    double sum = 0;
    for (const Part& part : parts) {
        const double off = part.mean - middle;
        sum += part.weight * (part.deviation * part.deviation + off * off);
    }
    return sum;
}

double Mixture::below(double x) const
{
    double sum = 0;
    for (const Part& part : parts) {
        sum += part.weight * quickNormalBelow((x - part.mean) / part.deviation);
    }
    return sum;
}

Mixture::Sides Mixture::sides(double low, double high) const
{
    const double under = low <= lineLow ? 0 : below(low);
    const double over = high >= lineHigh ? 0 : std::max(0.0, 1 - below(high));
    return {under, std::max(0.0, 1 - under - over), over};
}

double Mixture::within(double low, double high) const { return sides(low, high).within; }

double Mixture::quantile(double p) const
{
    const double z = normalQuantile(p);
    double low = parts.front().mean + z * parts.front().deviation;
    double high = low;
    for (const Part& part : parts) {
        low = std::min(low, part.mean + z * part.deviation);
        high = std::max(high, part.mean + z * part.deviation);
    }
    // The answer lies between the parts' own; Newton's step where it stays inside, else halving.
    double x = mean() + z * std::sqrt(variance());
    constexpr double closeEnough = 1e-6;
    while (high - low > closeEnough) {
        if (x <= low || x >= high) {
            x = (low + high) / 2;
        }
        double under = 0;
        double density = 0;
        for (const Part& part : parts) {
            const double at = (x - part.mean) / part.deviation;
            under += part.weight * quickNormalBelow(at);
            density += part.weight * normalDensity(at) / part.deviation;
        }
        (under < p ? low : high) = x;
        const double step = (p - under) / density;
        if (std::abs(step) < closeEnough / 2) {
            return x + step;
        }
        x += step;
    }
    return (low + high) / 2;
}

}  // namespace spile::outlook
