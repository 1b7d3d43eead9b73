#include "core/panel/cholesky.hpp"

#include <cmath>
#include <limits>
#include <numeric>
#include <utility>

namespace spile::panel {

Cholesky::Cholesky(std::vector<double> factor, std::size_t size)
    : factor_(std::move(factor)), size_(size)
{
}

std::optional<Cholesky> Cholesky::of(std::vector<double> matrix, std::size_t size)
{
    const auto tiny = static_cast<double>(size) * std::numeric_limits<double>::epsilon();
    for (std::size_t i = 0; i < size; ++i) {
        const auto row = matrix.begin() + static_cast<std::ptrdiff_t>(i * size);
        const double diagonal = row[static_cast<std::ptrdiff_t>(i)];
        for (std::size_t j = 0; j <= i; ++j) {
            const auto other = matrix.begin() + static_cast<std::ptrdiff_t>(j * size);
            const auto at = static_cast<std::ptrdiff_t>(j);
            const double rest = row[at] - std::inner_product(row, row + at, other, 0.0);
            if (j < i) {
                row[at] = rest / other[at];
            } else if (rest > tiny * diagonal) {
                row[at] = std::sqrt(rest);
            } else {
                return std::nullopt;  // also if something is not a number
            }
        }
    }
    return Cholesky(std::move(matrix), size);
}

double Cholesky::logDeterminant() const
{
    double sum = 0;
    for (std::size_t i = 0; i < size_; ++i) {
        sum += 2 * std::log(factor_[i * size_ + i]);
    }
    return sum;
}

std::vector<double> Cholesky::solved(std::span<const double> right) const
{
    std::vector<double> x(right.begin(), right.end());
    for (std::size_t i = 0; i < size_; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            x[i] -= factor_[i * size_ + j] * x[j];
        }
        x[i] /= factor_[i * size_ + i];
    }
    for (std::size_t i = size_; i-- > 0;) {
        for (std::size_t j = i + 1; j < size_; ++j) {
            x[i] -= factor_[j * size_ + i] * x[j];
        }
        x[i] /= factor_[i * size_ + i];
    }
    return x;
}

std::vector<double> Cholesky::inverse() const
{
    std::vector<double> result(size_ * size_);
    std::vector<double> unit(size_);
    for (std::size_t i = 0; i < size_; ++i) {
        unit[i] = 1;
        const std::vector<double> column = solved(unit);  // a row too: the inverse is symmetric
        unit[i] = 0;
        for (std::size_t j = 0; j < size_; ++j) {
            result[i * size_ + j] = column[j];
        }
    }
    return result;
}

}  // namespace spile::panel
