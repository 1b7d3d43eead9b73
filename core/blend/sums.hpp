#pragma once

#include "core/blend/problem.hpp"

#include <optional>
#include <vector>

/// The sums that a search adds up. Private to core/blend.
///
/// With D the weighted sum of a set's distances from the target, amount by amount, V its amount and
/// q what is not known of it, the expected squared distance is (|D|^2 + q) / V^2. For two barrels
/// their share in |D|^2 is one number, so that a set's distance needs no look at attributes.
namespace spile::blend {

struct Sums {
    explicit Sums(const Problem& problem);

    std::size_t count;     // of barrels
    std::size_t rows = 0;  // of linear bounds: of strength, then of each window
    std::size_t strengthRows = 0;
    std::vector<double> amount;  // of each barrel
    std::vector<double> pair;    // count x count: V_i V_j d_i W d_j
    std::vector<double> own;     // pair of itself, and its doubt: V^2 (d W d + r)
    std::vector<double> row;     // count x rows: V times what the barrel is inside a bound
    double leastShare;
    double amountLeast, amountMost;
    std::size_t barrelsMost, partsMost;

    /// Bounds are kept to this, by amount.
    static constexpr double slack = 1e-9;

    [[nodiscard]] const double* pairs(std::size_t barrel) const
    {
        return pair.data() + barrel * count;
    }
    [[nodiscard]] const double* bounds(std::size_t barrel) const
    {
        return row.data() + barrel * rows;
    }
};

/// What row `row` of the bounds is about.
struct Bound {
    std::optional<std::size_t> wish;  // none: strength
    bool upper = false;
    double value = 0;
};
[[nodiscard]] std::vector<Bound> boundsOf(const Problem& problem);

}  // namespace spile::blend
