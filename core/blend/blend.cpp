#include "core/blend/blend.hpp"

#include <cmath>
#include <numbers>

namespace spile::blend {

static double normalBelow(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

double chanceWithin(const Wish& wish, double mean, double deviation)
{
    if (!(deviation > 0)) {
        return mean >= wish.low.value_or(mean) && mean <= wish.high.value_or(mean) ? 1 : 0;
    }
    const double over = wish.high ? normalBelow((*wish.high - mean) / deviation) : 1;
    const double under = wish.low ? normalBelow((*wish.low - mean) / deviation) : 0;
    return std::max(0.0, over - under);
}

Blend blendOf(const Problem& problem, std::vector<Share> shares)
{
    Blend blend;
    blend.shares = std::move(shares);
    for (const Share& share : blend.shares) {
        blend.amount += share.amount;
    }
    const std::size_t attributes = problem.wishes.size();
    blend.mean.assign(attributes, 0);
    blend.deviation.assign(attributes, 0);
    for (const Share& share : blend.shares) {
        const Barrel& barrel = problem.barrels[share.barrel];
        const double part = share.amount / blend.amount;
        blend.strength += part * barrel.strength;
        for (std::size_t i = 0; i < attributes; ++i) {
            const double deviation = part * barrel.deviation[i];
            blend.mean[i] += part * barrel.mean[i];
            blend.deviation[i] += deviation * deviation;  // squares, until all are added
        }
    }
    for (std::size_t i = 0; i < attributes; ++i) {
        const Wish& wish = problem.wishes[i];
        if (wish.target) {
            const double off = blend.mean[i] - *wish.target;
            blend.distance += wish.weight * (off * off + blend.deviation[i]);
        }
        blend.deviation[i] = std::sqrt(blend.deviation[i]);
        if (wish.low || wish.high) {
            blend.chance *= chanceWithin(wish, blend.mean[i], blend.deviation[i]);
        }
    }
    return blend;
}

}  // namespace spile::blend
