#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace spile::blend {

/// A convex quadratic programme: the least x H x / 2 + g x with a x >= b for each bound, and
/// a x = b for the first `equalities` of them.
struct Quadratic {
    std::size_t size = 0;
    std::vector<double> h;  // size x size, positive definite
    std::vector<double> g;
    std::size_t equalities = 0;
    std::vector<std::vector<double>> a;
    std::vector<double> b;
};

/// Return the x of the least value; none if no x keeps the bounds.
///
/// Accuracy  bounds are kept to about 1e-10 of their terms.
/// Source    the dual active set method: D. Goldfarb and A. Idnani, "A numerically stable dual
///           method for solving strictly convex quadratic programs", Mathematical Programming 27
///           (1983) 1-33 (memory).
[[nodiscard]] std::optional<std::vector<double>> leastOf(const Quadratic& programme);

}  // namespace spile::blend
