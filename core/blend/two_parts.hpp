#pragma once

#include "core/blend/parts.hpp"

#include <array>

namespace spile::blend {

/// What the distance of a set and two barrels beside it, in shares s and t of them, is made of:
/// (a + 2 b0 s + 2 b1 t + c00 s^2 + 2 c01 s t + c11 t^2) / (v + w0 s + w1 t)^2.
struct TwoParts {
    double a, b0, b1, c00, c01, c11;
    double v, w0, w1;

    /// `pairs` is the sum of each barrel's pairs with those of the set.
    TwoParts(const Sums& sums, const SetSums& set, std::size_t first, std::size_t second,
             const std::vector<double>& pairs);

    /// Whether some shares, whatever they are, bring the distance below `limit`.
    [[nodiscard]] bool mayFallBelow(double limit) const;
    [[nodiscard]] double at(double s, double t) const;
};

/// The best shares of two barrels beside a set: each at least the least share and at most all. None
/// if no shares keep the bounds.
///
/// The shares that keep the bounds are a polygon; the distance has no lesser place than its least
/// one, in it or on an edge, where it is a fraction as for one share.
[[nodiscard]] std::optional<std::array<double, 2>> bestTwoShares(const Sums& sums,
                                                                 const SetSums& set,
                                                                 std::size_t first,
                                                                 std::size_t second,
                                                                 const std::vector<double>& pairs);

}  // namespace spile::blend
