#include "core/blend/exchange.hpp"

#include <algorithm>

namespace spile::blend {

// One point of a level, one per cent of strength and a tenth of the amount weigh the same.
static constexpr double perStrength = 100;
static constexpr double perAmount = 10;

double brokenBy(const Sums& sums, const SetSums& set)
{
    if (set.keeps(sums)) {
        return 0;
    }
    const auto beyond = [](double by) { return std::max(by, 0.0); };
    double sum = 0;
    if (set.amount < sums.amountLeast) {
        sum += perAmount * (1 - set.amount / sums.amountLeast);
    } else if (set.amount > sums.amountMost) {
        sum += perAmount * (set.amount / sums.amountMost - 1);
    }
    for (std::size_t k = 0; k < sums.rows; ++k) {
        const double by = beyond(-set.bounds[k]) / set.amount;
        sum += k < sums.strengthRows ? perStrength * by : by;
    }
    return sum;
}

namespace {

SetSums sumsOf(const Sums& sums, const std::vector<std::size_t>& set)
{
    SetSums made;
    made.bounds.assign(sums.rows, 0);
    for (std::size_t i = 0; i < set.size(); ++i) {
        double pairs = 0;
        for (std::size_t j = 0; j < i; ++j) {
            pairs += sums.pairs(set[i])[set[j]];
        }
        made.add(sums, set[i], pairs);
    }
    return made;
}

bool has(const std::vector<std::size_t>& set, std::size_t barrel)
{
    return std::find(set.begin(), set.end(), barrel) != set.end();
}

}  // namespace

Exchange::Worth Exchange::worthOf(const std::vector<std::size_t>& set) const
{
    const SetSums made = sumsOf(sums_, set);
    return {brokenBy(sums_, made), made.numerator / (made.amount * made.amount)};
}

// The best of all single changes, if it is one for the better.
bool Exchange::improve(std::vector<std::size_t>& set, Worth& worth) const
{
    std::vector<std::size_t> best;
    const auto consider = [&](const std::vector<std::size_t>& changed) {
        if (const Worth its = worthOf(changed); its < worth) {
            worth = its;
            best = changed;
        }
    };
    for (std::size_t barrel = 0; barrel < sums_.count; ++barrel) {
        if (has(set, barrel)) {
            continue;
        }
        std::vector<std::size_t> changed = set;
        if (set.size() < sums_.barrelsMost) {
            changed.push_back(barrel);
            consider(changed);
            changed.pop_back();
        }
        for (std::size_t& place : changed) {
            const std::size_t was = std::exchange(place, barrel);
            consider(changed);
            place = was;
        }
    }
    for (std::size_t i = 0; set.size() > 1 && i < set.size(); ++i) {
        std::vector<std::size_t> changed = set;
        changed.erase(changed.begin() + static_cast<std::ptrdiff_t>(i));
        consider(changed);
    }
    if (best.empty()) {
        return false;
    }
    set = std::move(best);
    return true;
}

// As it is, and with each of its barrels in part.
void Exchange::keep(const std::vector<std::size_t>& set, const Worth& worth)
{
    if (leastBroken_ < 0 || worth.broken < leastBroken_) {
        leastBroken_ = worth.broken;
        nearest_ = set;
    }
    if (worth.broken == 0) {
        take_(set, std::vector<double>(set.size(), 1));
    }
    for (std::size_t i = 0; sums_.partsMost > 0 && i < set.size(); ++i) {
        std::vector<std::size_t> rest = set;
        std::swap(rest[i], rest.back());
        const std::size_t part = rest.back();
        rest.pop_back();
        double pairs = 0;
        for (const std::size_t barrel : rest) {
            pairs += sums_.pairs(part)[barrel];
        }
        if (const auto share = bestShare(sums_, sumsOf(sums_, rest), part, pairs)) {
            std::vector<double> shares(rest.size(), 1);
            shares.push_back(*share);
            rest.push_back(part);
            take_(rest, shares);
        }
    }
    for (std::size_t i = 0; sums_.partsMost > 1 && i < set.size(); ++i) {
        for (std::size_t j = i + 1; j < set.size(); ++j) {
            keepTwoParts(set, set[i], set[j]);
        }
    }
}

void Exchange::keepTwoParts(const std::vector<std::size_t>& set, std::size_t first,
                            std::size_t second)
{
    std::vector<std::size_t> rest = set;
    std::erase_if(rest, [&](std::size_t barrel) { return barrel == first || barrel == second; });
    std::vector<double> pairs(sums_.count, 0);
    for (const std::size_t barrel : rest) {
        pairs[first] += sums_.pairs(first)[barrel];
        pairs[second] += sums_.pairs(second)[barrel];
    }
    if (const auto best = bestTwoShares(sums_, sumsOf(sums_, rest), first, second, pairs)) {
        rest.insert(rest.end(), {first, second});
        std::vector<double> shares(rest.size(), 1);
        shares[shares.size() - 2] = (*best)[0];
        shares.back() = (*best)[1];
        take_(rest, shares);
    }
}

void Exchange::run(int starts, Random& random)
{
    const auto count = static_cast<std::uint32_t>(sums_.count);
    for (int start = 0; start < starts; ++start) {
        const std::size_t size = 1 + random.below(static_cast<std::uint32_t>(sums_.barrelsMost));
        std::vector<std::size_t> set;
        while (set.size() < size) {
            const std::size_t barrel = random.below(count);
            if (!has(set, barrel)) {
                set.push_back(barrel);
            }
        }
        Worth worth = worthOf(set);
        while (improve(set, worth)) {
        }
        keep(set, worth);
    }
}

}  // namespace spile::blend
