#include "core/panel/least_squares.hpp"

#include <cmath>
#include <numeric>
#include <utility>

namespace spile::panel {

double meanOf(const std::vector<double>& x)
{
    return std::accumulate(x.begin(), x.end(), 0.0) / static_cast<double>(x.size());
}

static double product(const std::vector<double>& x, double centreX, const std::vector<double>& y,
                      double centreY)
{
    double sum = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        sum += (x[i] - centreX) * (y[i] - centreY);
    }
    return sum;
}

std::optional<StraightFit> straightFit(const std::vector<double>& y,
                                       const std::vector<std::vector<double>>& columns)
{
    const std::size_t p = columns.size();
    StraightFit fit;
    fit.freedom = static_cast<int>(y.size()) - static_cast<int>(p) - 1;
    if (fit.freedom < 1) {
        return std::nullopt;
    }
    fit.mean = meanOf(y);
    for (const auto& column : columns) {
        fit.centre.push_back(meanOf(column));
    }
    std::vector<double> cross;
    std::vector<double> right;
    for (std::size_t a = 0; a < p; ++a) {
        for (std::size_t b = 0; b < p; ++b) {
            cross.push_back(product(columns[a], fit.centre[a], columns[b], fit.centre[b]));
        }
        right.push_back(product(columns[a], fit.centre[a], y, fit.mean));
    }
    const auto factor = Cholesky::of(std::move(cross), p);
    if (!factor) {
        return std::nullopt;
    }
    fit.slopes = factor->solved(right);
    fit.inverse = factor->inverse();
    double squares = 0;
    std::vector<double> x(p);
    for (std::size_t i = 0; i < y.size(); ++i) {
        for (std::size_t a = 0; a < p; ++a) {
            x[a] = columns[a][i];
        }
        fit.residuals.push_back(y[i] - fit.at(x));
        squares += fit.residuals.back() * fit.residuals.back();
    }
    fit.variance = squares / fit.freedom;
    return fit;
}

double StraightFit::at(const std::vector<double>& x) const
{
    double y = mean;
    for (std::size_t a = 0; a < x.size(); ++a) {
        y += slopes[a] * (x[a] - centre[a]);
    }
    return y;
}

double StraightFit::slopeError(std::size_t column) const
{
    return std::sqrt(variance * inverse[column * slopes.size() + column]);
}

double StraightFit::relativeVarianceAt(const std::vector<double>& x) const
{
    double sum = 1 / static_cast<double>(residuals.size());
    for (std::size_t a = 0; a < x.size(); ++a) {
        for (std::size_t b = 0; b < x.size(); ++b) {
            sum += (x[a] - centre[a]) * inverse[a * x.size() + b] * (x[b] - centre[b]);
        }
    }
    return sum;
}

}  // namespace spile::panel
