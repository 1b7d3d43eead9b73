#include "core/wood/extraction.hpp"

#include <algorithm>
#include <cmath>

namespace spile::wood {

namespace {

constexpr double monthsOfYear = 12;

double logistic(double x) { return 1 / (1 + std::exp(-x)); }

}  // namespace

Basis saturatingBasis(double rate, double age)
{
    const double x = -rate * std::max(age, 0.0);
    return {std::exp(x), -std::expm1(x)};
}

Basis linearBasis(double age) { return {1, std::max(age, 0.0) / monthsOfYear}; }

Basis risingFallingBasis(double rise, double fall, double age)
{
    const double t = std::max(age, 0.0);
    const double highest = std::log(rise / fall) / (rise - fall);
    const double left = std::exp(-fall * t);
    return {left,
            (left - std::exp(-rise * t)) / (std::exp(-fall * highest) - std::exp(-rise * highest))};
}

Basis delayedBasis(double middle, double width, double age)
{
    const double before = logistic(-middle / width);
    const double s = (logistic((std::max(age, 0.0) - middle) / width) - before) / (1 - before);
    return {1 - s, s};
}

}  // namespace spile::wood
