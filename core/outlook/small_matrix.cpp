#include "core/outlook/small_matrix.hpp"

#include <cmath>
#include <limits>

namespace spile::outlook {

double factorise(std::span<double> a, std::size_t n)
{
    double logDeterminant = 0;
    for (std::size_t j = 0; j < n; ++j) {
        double diagonal = a[j * n + j];
        for (std::size_t k = 0; k < j; ++k) {
            diagonal -= a[j * n + k] * a[j * n + k];
        }
        if (!(diagonal > 0)) {
            return std::numeric_limits<double>::quiet_NaN();
        }
        const double root = std::sqrt(diagonal);
        a[j * n + j] = root;
        logDeterminant += std::log(diagonal);
        for (std::size_t i = j + 1; i < n; ++i) {
            double sum = a[i * n + j];
            for (std::size_t k = 0; k < j; ++k) {
                sum -= a[i * n + k] * a[j * n + k];
            }
            a[i * n + j] = sum / root;
        }
    }
    return logDeterminant;
}

void invertFactor(std::span<const double> l, std::span<double> inverse, std::size_t n)
{
    // First L^-1 into the lower half, then its transpose times itself.
    for (std::size_t j = 0; j < n; ++j) {
        inverse[j * n + j] = 1 / l[j * n + j];
        for (std::size_t i = j + 1; i < n; ++i) {
            double sum = 0;
            for (std::size_t k = j; k < i; ++k) {
                sum -= l[i * n + k] * inverse[k * n + j];
            }
            inverse[i * n + j] = sum / l[i * n + i];
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = 0;
            for (std::size_t k = i; k < n; ++k) {
                sum += inverse[k * n + i] * inverse[k * n + j];
            }
            inverse[i * n + j] = sum;  // row i is not read again for what comes later
            inverse[j * n + i] = sum;
        }
    }
}

}  // namespace spile::outlook
