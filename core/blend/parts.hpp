#pragma once

#include "core/blend/sums.hpp"

#include <optional>
#include <vector>

namespace spile::blend {

/// A set's sums: its numerator, its amount, and what it is inside each bound.
struct SetSums {
    double numerator = 0;
    double amount = 0;
    std::vector<double> bounds;

    [[nodiscard]] bool keeps(const Sums& sums) const;
    /// Whether it does with all of that barrel added.
    [[nodiscard]] bool keepsWith(const Sums& sums, std::size_t barrel) const;
    /// Add all of a barrel; `pairs` is the sum of its pairs with those that are in.
    void add(const Sums& sums, std::size_t barrel, double pairs);
};

/// The best amount of one barrel beside a set, as a share of what it holds: at least the least
/// share. `pairs` as in SetSums::add. None if no share keeps the bounds.
///
/// Source    (A + 2 B x + C x^2) / (v + x)^2 has one stationary point, at (A - B v) / (C v - B).
[[nodiscard]] std::optional<double> bestShare(const Sums& sums, const SetSums& set,
                                              std::size_t barrel, double pairs);

/// A distance that no blend of these barrels can fall below, however many of them are taken in
/// part. Infinite if none keeps the bounds.
[[nodiscard]] double leastDistance(const Sums& sums, const std::vector<std::size_t>& barrels);

}  // namespace spile::blend
