#pragma once

#include "core/base/result.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// The bench: which barrels, in which shares, come nearest to a target.
///
/// Words     an amount: litres, kilograms, any unit that is the same throughout and adds up. A
///           barrel gives all it holds, or, for a few, a part of it. A blend's level of an
///           attribute is the mean of its barrels' by amount; so is its strength.
namespace spile::blend {

/// What one barrel could give.
struct Barrel {
    std::string name;
    double amount = 0;                   // > 0
    double strength = 0;                 // a fraction of the amount, 0 to 1
    std::vector<double> mean = {};       // of each attribute
    std::vector<double> deviation = {};  // how sure that is; >= 0
};

/// What is wanted of one attribute.
struct Wish {
    std::string attribute;
    std::optional<double> target = {};
    double weight = 1;  // > 0; of the squared distance from the target
    /// Bounds that the blend's expected level must keep.
    std::optional<double> low = {}, high = {};
};

struct Limits {
    std::size_t barrelsMost = 4;  // 1 to barrelsAtMost
    std::size_t partsMost = 0;    // of these, that may be taken in part: 0 to partsAtMost
    double leastShare = 0;        // of a barrel that is taken in part, 0 to 1
    double amountLeast = 0;
    std::optional<double> amountMost = {};
    std::optional<double> strengthLeast = {}, strengthMost = {};
};

inline constexpr std::size_t barrelsAtMost = 8;
inline constexpr std::size_t partsAtMost = 2;
inline constexpr std::size_t candidatesAtMost = 500;

struct Problem {
    std::vector<Wish> wishes;
    std::vector<Barrel> barrels;
    Limits limits;
};

/// Errors    NotFinite, OutOfRange or Conflict, naming what is wrong: a number outside its range, a
///           barrel without a level for each wish, bounds the wrong way round, no target at all.
[[nodiscard]] Result<void> checkProblem(const Problem& problem);

}  // namespace spile::blend
