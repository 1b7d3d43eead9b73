#include "core/blend/parts.hpp"

#include "core/blend/quadratic.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace spile::blend {

bool SetSums::keeps(const Sums& sums, double times) const
{
    const double slack = times * Sums::slack * amount;
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

// Where barrels are known without doubt and lie alike, the distance is flat, and nothing holds
// their parts. So each round is held a little by the last one's answer: the proximal point method
// (R. T. Rockafellar, SIAM Journal on Control and Optimization 14 (1976) 877-898, memory).
constexpr double hold = 1e-7;
constexpr int rounds = 5;

// The programme in w, the parts of the blend, of the barrels in `free`. With s, one over the
// blend's amount, a whole barrel's part is V s, and s = s0 + s1 (w1 + w2 + ...): with whole barrels
// the parts say how much there is; without, s is given.
class Programme {
public:
    Programme(const Sums& sums, const std::vector<std::size_t>& whole,
              const std::vector<std::size_t>& free, double given)
        : sums_(sums), free_(free), s0_(given)
    {
        whole_.bounds.assign(sums.rows, 0);
        shared_.assign(free.size(), 0);
        for (const std::size_t barrel : whole) {
            double pairs = 0;
            for (const std::size_t other : whole) {
                pairs += other < barrel ? sums.pairs(barrel)[other] : 0;
            }
            whole_.add(sums, barrel, pairs);
            for (std::size_t i = 0; i < free.size(); ++i) {
                shared_[i] += sums.pairs(barrel)[free[i]] / sums.amount[free[i]];
            }
        }
        if (!whole.empty()) {
            s0_ = 1 / whole_.amount;
            s1_ = -s0_;
        }
        fillDistance();
        if (whole.empty()) {
            add(std::vector<double>(free.size(), 1), 0, 1);
            made_.equalities = 1;
        }
        addBounds();
    }

    // No more of a barrel than it has, and no less than is worth the work.
    void addShares()
    {
        for (std::size_t i = 0; i < free_.size(); ++i) {
            const double amount = sums_.amount[free_[i]];
            std::vector<double> row(free_.size(), 0);
            row[i] = 1;
            add(row, -sums_.leastShare * amount, 0);
            row[i] = -1;
            add(row, amount, 0);
        }
    }

    void addSigns()
    {
        for (std::size_t i = 0; i < free_.size(); ++i) {
            std::vector<double> row(free_.size(), 0);
            row[i] = 1;
            add(row, 0, 0);
        }
    }

    void addAmount()
    {
        const std::vector<double> none(free_.size(), 0);
        const double unit = whole_.amount;
        if (std::isfinite(sums_.amountMost)) {
            add(none, unit, unit / (sums_.amountMost * (1 + Sums::slack)));
        }
        if (sums_.amountLeast > 0) {
            add(none, -unit, -unit / (sums_.amountLeast * (1 - Sums::slack)));
        }
    }

    // No more than so many barrels, as far as parts can say it: a barrel's part is at most V s.
    void allow(std::size_t barrels)
    {
        std::vector<double> row;
        double most = 0;
        for (const std::size_t barrel : free_) {
            most = std::max(most, sums_.amount[barrel]);
        }
        for (const std::size_t barrel : free_) {
            row.push_back(-most / sums_.amount[barrel]);
        }
        add(row, static_cast<double>(barrels) * most, 0);
    }

    [[nodiscard]] std::optional<std::vector<double>> run() const
    {
        Quadratic held = made_;
        std::optional<std::vector<double>> w;
        for (int round = 0; round < rounds; ++round) {
            for (std::size_t i = 0; w && i < free_.size(); ++i) {
                held.g[i] = made_.g[i] - hold * (*w)[i];
            }
            w = leastOf(held);
            if (!w) {
                return std::nullopt;
            }
        }
        return w;
    }

    [[nodiscard]] double amountOf(const std::vector<double>& w) const
    {
        return 1 / (s0_ + s1_ * std::accumulate(w.begin(), w.end(), 0.0));
    }

    [[nodiscard]] double distanceOf(const std::vector<double>& w) const
    {
        const std::size_t n = w.size();
        double sum = s0_ * s0_ * whole_.numerator;
        for (std::size_t i = 0; i < n; ++i) {
            double row = 2 * made_.g[i];
            for (std::size_t j = 0; j < n; ++j) {
                row += (made_.h[i * n + j] - (i == j ? hold : 0)) * w[j];
            }
            sum += row * w[i] * typical_;
        }
        return sum;
    }
    // How much less it could be, had the last round not been held.
    [[nodiscard]] double doubt() const { return 10 * hold * typical_; }

    [[nodiscard]] const SetSums& whole() const { return whole_; }

private:
    void fillDistance()
    {
        const std::size_t n = free_.size();
        for (const std::size_t barrel : free_) {
            const double amount = sums_.amount[barrel];
            typical_ = std::max(typical_, sums_.own[barrel] / (amount * amount));
        }
        made_.size = n;
        const double both = s1_ * s1_ * whole_.numerator;
        for (std::size_t i = 0; i < n; ++i) {
            const std::size_t one = free_[i];
            for (std::size_t j = 0; j < n; ++j) {
                const std::size_t other = free_[j];
                const double pair = i == j ? sums_.own[one] : sums_.pairs(one)[other];
                const double value = pair / (sums_.amount[one] * sums_.amount[other]) +
                                     s1_ * (shared_[i] + shared_[j]) + both;
                made_.h.push_back(value / typical_ + (i == j ? hold : 0));
            }
            made_.g.push_back((s0_ * shared_[i] + s0_ * s1_ * whole_.numerator) / typical_);
        }
    }

    // row w + perS s >= least, or = for the first.
    void add(std::vector<double> row, double perS, double least)
    {
        for (double& value : row) {
            value += perS * s1_;
        }
        made_.a.push_back(std::move(row));
        made_.b.push_back(least - perS * s0_);
    }

    void addBounds()
    {
        for (std::size_t k = 0; k < sums_.rows; ++k) {
            std::vector<double> row;
            for (const std::size_t barrel : free_) {
                row.push_back(sums_.bounds(barrel)[k] / sums_.amount[barrel]);
            }
            add(row, whole_.bounds[k], -Sums::slack);
        }
    }

    const Sums& sums_;
    const std::vector<std::size_t>& free_;
    SetSums whole_;
    std::vector<double> shared_;  // of each free one with the whole ones, by its own amount
    double s0_, s1_ = 0;
    double typical_ = 1e-300;
    Quadratic made_;
};

}  // namespace

std::optional<std::vector<double>> bestShares(const Sums& sums,
                                              const std::vector<std::size_t>& whole,
                                              const std::vector<std::size_t>& parts)
{
    // Parts alone can be enlarged together until one is whole, which is another set of parts, or
    // there is as much as may be.
    if (whole.empty() && !std::isfinite(sums.amountMost)) {
        return std::nullopt;
    }
    Programme programme(sums, whole, parts, whole.empty() ? 1 / sums.amountMost : 0);
    programme.addShares();
    if (!whole.empty()) {
        programme.addAmount();
    }
    const auto w = programme.run();
    if (!w) {
        return std::nullopt;
    }
    const double amount = programme.amountOf(*w);
    std::vector<double> shares;
    SetSums all = programme.whole();
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::size_t part = parts[i];
        const double share = std::clamp((*w)[i] * amount / sums.amount[part], sums.leastShare, 1.0);
        shares.push_back(share);
        all.amount += share * sums.amount[part];
        for (std::size_t k = 0; k < sums.rows; ++k) {
            all.bounds[k] += share * sums.bounds(part)[k];
        }
    }
    constexpr double rounding = 10;  // of the programme, in times the slack
    return all.keeps(sums, rounding) ? std::optional(shares) : std::nullopt;
}

double leastDistance(const Sums& sums, const std::vector<std::size_t>& barrels)
{
    if (barrels.empty()) {
        return std::numeric_limits<double>::infinity();
    }
    Sums loose = sums;
    loose.leastShare = 0;
    // The less there is, the less holds the parts: as little as may be is the freest.
    const bool isHeld = sums.amountLeast > 0;
    Programme programme(loose, {}, barrels,
                        isHeld ? 1 / (sums.amountLeast * (1 - Sums::slack)) : 0);
    if (isHeld) {
        programme.addShares();
        programme.allow(sums.barrelsMost);
    } else {
        programme.addSigns();
    }
    const auto w = programme.run();
    return w ? std::max(0.0, programme.distanceOf(*w) * (1 - 1e-7) - programme.doubt())
             : std::numeric_limits<double>::infinity();
}

}  // namespace spile::blend
