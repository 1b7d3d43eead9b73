#pragma once

#include "core/blend/problem.hpp"

namespace spile::blend {

/// What is taken of one barrel.
struct Share {
    std::size_t barrel = 0;  // its place in the problem
    double amount = 0;

    friend bool operator==(const Share&, const Share&) = default;
};

/// A blend and what is to be expected of it.
struct Blend {
    std::vector<Share> shares;  // in the order of the barrels
    double amount = 0;
    double strength = 0;
    std::vector<double> mean, deviation;  // of each attribute
    /// The expected square of the distance from the target: what weighs the distance of the mean,
    /// and what is not known of the barrels.
    double distance = 0;
    /// That all levels with bounds lie within them; 1 if there are no bounds.
    double chance = 1;
};

/// Return the chance that a level known with this deviation lies within the wish's bounds; one that
/// is known without doubt does or does not.
[[nodiscard]] double chanceWithin(const Wish& wish, double mean, double deviation);

/// Return the blend of these shares. Requires a checked problem and shares above 0.
///
/// Limits    errors of barrels are taken as independent, those of attributes too.
/// Source    the mean and variance of a weighted sum; the reference instances in tests/reference.
[[nodiscard]] Blend blendOf(const Problem& problem, std::vector<Share> shares);

}  // namespace spile::blend
