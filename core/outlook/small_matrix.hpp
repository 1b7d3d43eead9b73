#pragma once

#include <cstddef>
#include <span>

/// Small symmetric positive definite matrices, row by row in plain arrays. Nothing allocates.
namespace spile::outlook {

/// Replace the lower half of the n x n matrix `a` by its Cholesky factor; return the logarithm of
/// the determinant, or NaN if it is not positive definite.
[[nodiscard]] double factorise(std::span<double> a, std::size_t n);

/// Write the inverse of the matrix whose factor is `l` into `inverse`, both halves.
void invertFactor(std::span<const double> l, std::span<double> inverse, std::size_t n);

/// out = a x, for a full symmetric matrix.
inline void multiply(std::span<const double> a, std::span<const double> x, std::span<double> out,
                     std::size_t n)
{
    for (std::size_t i = 0; i < n; ++i) {
        double sum = 0;
        for (std::size_t j = 0; j < n; ++j) {
            sum += a[i * n + j] * x[j];
        }
        out[i] = sum;
    }
}

[[nodiscard]] inline double dot(std::span<const double> a, std::span<const double> b, std::size_t n)
{
    double sum = 0;
    for (std::size_t i = 0; i < n; ++i) {
        sum += a[i] * b[i];
    }
    return sum;
}

}  // namespace spile::outlook
