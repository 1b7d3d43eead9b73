#include "core/blend/sums.hpp"

#include <algorithm>
#include <limits>

namespace spile::blend {

std::vector<Bound> boundsOf(const Problem& problem)
{
    std::vector<Bound> bounds;
    const auto add = [&](std::optional<std::size_t> wish, const std::optional<double>& low,
                         const std::optional<double>& high) {
        if (low) {
            bounds.push_back({wish, false, *low});
        }
        if (high) {
            bounds.push_back({wish, true, *high});
        }
    };
    add(std::nullopt, problem.limits.strengthLeast, problem.limits.strengthMost);
    for (std::size_t i = 0; i < problem.wishes.size(); ++i) {
        add(i, problem.wishes[i].low, problem.wishes[i].high);
    }
    return bounds;
}

static double doubtOf(const Problem& problem, const Barrel& barrel)
{
    double doubt = 0;
    for (std::size_t a = 0; a < problem.wishes.size(); ++a) {
        const Wish& wish = problem.wishes[a];
        doubt += wish.target ? wish.weight * barrel.deviation[a] * barrel.deviation[a] : 0;
    }
    return doubt;
}

// How the distances of two barrels from the target go together: d W d.
static double pairOf(const Problem& problem, const Barrel& one, const Barrel& other)
{
    double sum = 0;
    for (std::size_t a = 0; a < problem.wishes.size(); ++a) {
        const Wish& wish = problem.wishes[a];
        if (wish.target) {
            sum += wish.weight * (one.mean[a] - *wish.target) * (other.mean[a] - *wish.target);
        }
    }
    return sum;
}

Sums::Sums(const Problem& problem)
    : count(problem.barrels.size()),
      leastShare(problem.limits.leastShare),
      amountLeast(problem.limits.amountLeast),
      amountMost(problem.limits.amountMost.value_or(std::numeric_limits<double>::infinity())),
      barrelsMost(std::min(problem.limits.barrelsMost, count)),
      partsMost(std::min(problem.limits.partsMost, barrelsMost))
{
    const std::vector<Bound> all = boundsOf(problem);
    rows = all.size();
    strengthRows = static_cast<std::size_t>(
        std::count_if(all.begin(), all.end(), [](const Bound& bound) { return !bound.wish; }));
    for (const Barrel& one : problem.barrels) {
        amount.push_back(one.amount);
        const double squared = one.amount * one.amount;
        own.push_back(squared * (pairOf(problem, one, one) + doubtOf(problem, one)));
        for (const Barrel& other : problem.barrels) {
            pair.push_back(one.amount * other.amount * pairOf(problem, one, other));
        }
        for (const Bound& bound : all) {
            const double level = bound.wish ? one.mean[*bound.wish] : one.strength;
            row.push_back(one.amount * (bound.upper ? bound.value - level : level - bound.value));
        }
    }
}

}  // namespace spile::blend
