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
    pair.assign(count * count, 0);
    for (std::size_t i = 0; i < count; ++i) {
        const Barrel& one = problem.barrels[i];
        amount.push_back(one.amount);
        double doubt = 0;
        for (std::size_t a = 0; a < problem.wishes.size(); ++a) {
            const Wish& wish = problem.wishes[a];
            if (!wish.target) {
                continue;
            }
            doubt += wish.weight * one.deviation[a] * one.deviation[a];
            const double off = wish.weight * (one.mean[a] - *wish.target);
            for (std::size_t j = 0; j < count; ++j) {
                const Barrel& other = problem.barrels[j];
                pair[i * count + j] +=
                    one.amount * other.amount * off * (other.mean[a] - *wish.target);
            }
        }
        own.push_back(pair[i * count + i] + one.amount * one.amount * doubt);
        for (const Bound& bound : all) {
            const double level = bound.wish ? one.mean[*bound.wish] : one.strength;
            row.push_back(one.amount * (bound.upper ? bound.value - level : level - bound.value));
        }
    }
}

}  // namespace spile::blend
