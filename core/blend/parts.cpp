#include "core/blend/parts.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace spile::blend {

bool SetSums::keeps(const Sums& sums) const
{
    const double slack = Sums::slack * amount;
    return amount >= sums.amountLeast - slack && amount <= sums.amountMost + slack &&
           std::all_of(bounds.begin(), bounds.end(),
                       [slack](double inside) { return inside >= -slack; });
}

bool SetSums::keepsWith(const Sums& sums, std::size_t barrel) const
{
    const double all = amount + sums.amount[barrel];
    const double slack = Sums::slack * all;
    if (all < sums.amountLeast - slack || all > sums.amountMost + slack) {
        return false;
    }
    const double* gives = sums.bounds(barrel);
    for (std::size_t k = 0; k < sums.rows; ++k) {
        if (bounds[k] + gives[k] < -slack) {
            return false;
        }
    }
    return true;
}

void SetSums::add(const Sums& sums, std::size_t barrel, double pairs)
{
    numerator += 2 * pairs + sums.own[barrel];
    amount += sums.amount[barrel];
    for (std::size_t k = 0; k < sums.rows; ++k) {
        bounds[k] += sums.bounds(barrel)[k];
    }
}

std::optional<double> bestShare(const Sums& sums, const SetSums& set, std::size_t barrel,
                                double pairs)
{
    const double all = sums.amount[barrel];
    double low =
        std::max(sums.leastShare, (sums.amountLeast * (1 - Sums::slack) - set.amount) / all);
    double high = std::min(1.0, (sums.amountMost * (1 + Sums::slack) - set.amount) / all);
    for (std::size_t k = 0; k < sums.rows && low <= high; ++k) {
        const double has = set.bounds[k] + Sums::slack * set.amount;
        const double gives = sums.bounds(barrel)[k] + Sums::slack * all;
        if (gives > 0) {
            low = std::max(low, -has / gives);
        } else if (gives < 0) {
            high = std::min(high, has / -gives);
        } else if (has < 0) {
            return std::nullopt;
        }
    }
    if (!(low <= high) || !(high > 0)) {
        return std::nullopt;
    }
    // In shares s of the barrel: A + 2 B s + C s^2 over (v + all s)^2.
    const double a = set.numerator;
    const double c = sums.own[barrel];
    const double up = a * all - pairs * set.amount;
    const double down = c * set.amount - pairs * all;
    if (down > 0) {
        return std::clamp(up / down, low, high);
    }
    const auto at = [&](double s) {
        const double amount = set.amount + all * s;
        return (a + s * (2 * pairs + s * c)) / (amount * amount);
    };
    return low > 0 && at(low) < at(high) ? low : high;
}

namespace {

// A blend of any parts of these barrels, each part at most what the barrel holds of the least
// amount.
class FreeBlend {
public:
    FreeBlend(const Sums& sums, const std::vector<std::size_t>& barrels)
        : sums_(sums), barrels_(barrels), order_(barrels.size())
    {
        for (const std::size_t barrel : barrels) {
            const double most = sums.amountLeast > 0 ? sums.amount[barrel] / sums.amountLeast : 1;
            most_.push_back(std::min(1.0, most * (1 + Sums::slack)));
        }
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        part_ = cheapest(std::vector<double>(barrels.size(), 0));
    }

    // One step towards the parts that the slope speaks for. Return a value that no blend falls
    // below: a convex function lies above its tangent. False parts: there is not enough beer at
    // all.
    double step()
    {
        const std::size_t n = barrels_.size();
        std::vector<double> slope(n, 0);
        double value = 0;
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t j = 0; j < n; ++j) {
                slope[i] += pairOf(i, j) * part_[j];
            }
            value += slope[i] * part_[i];
        }
        const std::vector<double> to = cheapest(slope);
        double gap = 0;   // half of what the tangent promises
        double bend = 0;  // of the way there
        for (std::size_t i = 0; i < n; ++i) {
            gap += slope[i] * (part_[i] - to[i]);
            for (std::size_t j = 0; j < n; ++j) {
                bend += (to[i] - part_[i]) * pairOf(i, j) * (to[j] - part_[j]);
            }
        }
        const double far = bend > 0 ? std::min(1.0, gap / bend) : 1;
        for (std::size_t i = 0; i < n; ++i) {
            part_[i] += far * (to[i] - part_[i]);
        }
        return value - 2 * gap;
    }

    [[nodiscard]] bool isEnough() const
    {
        return std::accumulate(most_.begin(), most_.end(), 0.0) >= 1;
    }

private:
    [[nodiscard]] double pairOf(std::size_t i, std::size_t j) const
    {
        const std::size_t one = barrels_[i];
        const std::size_t other = barrels_[j];
        const double both = i == j ? sums_.own[one] : sums_.pairs(one)[other];
        return both / (sums_.amount[one] * sums_.amount[other]);
    }

    // All of the barrels with the least slope, until the blend is whole.
    std::vector<double> cheapest(const std::vector<double>& slope)
    {
        std::sort(order_.begin(), order_.end(),
                  [&](std::size_t a, std::size_t b) { return slope[a] < slope[b]; });
        std::vector<double> part(slope.size(), 0);
        double left = 1;
        for (const std::size_t i : order_) {
            part[i] = std::min(left, most_[i]);
            left -= part[i];
        }
        return part;
    }

    const Sums& sums_;
    const std::vector<std::size_t>& barrels_;
    std::vector<double> most_, part_;
    std::vector<std::size_t> order_;
};

}  // namespace

double leastDistance(const Sums& sums, const std::vector<std::size_t>& barrels)
{
    FreeBlend blend(sums, barrels);
    if (barrels.empty() || !blend.isEnough()) {
        return std::numeric_limits<double>::infinity();
    }
    constexpr int steps = 1000;
    double bound = 0;
    for (int step = 0; step < steps; ++step) {
        bound = std::max(bound, blend.step());
    }
    return bound;
}

}  // namespace spile::blend
