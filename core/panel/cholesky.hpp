#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace spile::panel {

/// The factor of a small symmetric positive definite matrix, with which its equations are solved.
///
/// Shape     square, `size` rows one after the other; only the lower triangle is read.
/// Accuracy  that of double arithmetic times the matrix's condition.
/// Source    G. H. Golub and C. F. Van Loan, "Matrix Computations", algorithm 4.2.1 (from memory).
class Cholesky {
public:
    /// Nothing if the matrix is not positive definite, as far as numbers can tell.
    [[nodiscard]] static std::optional<Cholesky> of(std::vector<double> matrix, std::size_t size);

    [[nodiscard]] double logDeterminant() const;
    [[nodiscard]] std::vector<double> solved(std::span<const double> right) const;
    [[nodiscard]] std::vector<double> inverse() const;

private:
    Cholesky(std::vector<double> factor, std::size_t size);

    std::vector<double> factor_;
    std::size_t size_;
};

}  // namespace spile::panel
