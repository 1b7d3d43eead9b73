#pragma once

#include "core/panel/cholesky.hpp"

#include <optional>
#include <vector>

namespace spile::panel {

/// Return the mean. Requires a value.
[[nodiscard]] double meanOf(const std::vector<double>& x);

/// A straight fit y = a + b1 x1 + b2 x2 + ..., the columns taken about their means.
struct StraightFit {
    double mean = 0;             // of y, where all columns are at theirs
    std::vector<double> centre;  // of each column
    std::vector<double> slopes;
    std::vector<double> residuals;
    double variance = 0;  // of the residuals
    int freedom = 0;
    std::vector<double> inverse;  // of the columns' cross products

    [[nodiscard]] double at(const std::vector<double>& x) const;
    [[nodiscard]] double slopeError(std::size_t column) const;
    /// The variance of at(x), relative to the residuals' variance.
    [[nodiscard]] double relativeVarianceAt(const std::vector<double>& x) const;
};

/// Return the least squares fit; nothing if there are too few rows or a column depends on others.
///
/// Shape     `columns` of the length of `y`; there may be none.
/// Accuracy  that of the normal equations: enough for columns that are no near copies.
[[nodiscard]] std::optional<StraightFit> straightFit(
    const std::vector<double>& y, const std::vector<std::vector<double>>& columns);

}  // namespace spile::panel
