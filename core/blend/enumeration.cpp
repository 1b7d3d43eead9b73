#include "core/blend/enumeration.hpp"

#include <algorithm>

namespace spile::blend {

// Sets between two reports: some milliseconds.
static constexpr std::uint64_t setsPerReport = 2'000'000;

Enumeration::Enumeration(const Sums& sums, const BestKept& kept, Take take, const Job& job)
    : sums_(sums), kept_(kept), take_(std::move(take)), job_(job)
{
    levels_.resize(sums_.barrelsMost);
    for (Level& level : levels_) {
        level.set.bounds.assign(sums_.rows, 0);
        level.pairs.assign(sums_.count, 0);
    }
    double sets = 1;
    for (std::size_t n = 1; n <= sums_.barrelsMost; ++n) {
        // Each set of n - 1 with each barrel as a part, and each set of n.
        most_ += sums_.partsMost > 0 ? sets * static_cast<double>(sums_.count - n + 1) : 0;
        if (sums_.partsMost > 1 && n < sums_.barrelsMost) {
            most_ += sets * static_cast<double>(sums_.count * (sums_.count - 1)) / 2;
        }
        sets *= static_cast<double>(sums_.count - n + 1) / static_cast<double>(n);
        most_ += sets;
    }
}

bool Enumeration::run()
{
    visit(0, 0);
    return !stopped_;
}

bool Enumeration::isIn(std::size_t barrel) const
{
    return std::find(in_.begin(), in_.end(), barrel) != in_.end();
}

void Enumeration::count(std::size_t sets)
{
    done_ += sets;
    if (done_ - told_ >= setsPerReport) {
        told_ = done_;
        stopped_ = !job_.advance(done_, static_cast<std::uint64_t>(most_));
    }
}

void Enumeration::visit(std::size_t level, std::size_t begin)
{
    const Level& at = levels_[level];
    lookAtWhole(at, begin);
    if (sums_.partsMost > 0) {
        lookAtPart(at);
    }
    if (level + 1 >= sums_.barrelsMost) {
        return;
    }
    if (sums_.partsMost > 1) {
        lookAtTwoParts(at);
    }
    Level& next = levels_[level + 1];
    for (std::size_t barrel = begin; barrel < sums_.count && !stopped_; ++barrel) {
        if (level == 0) {
            firstOpen_ = barrel;
        }
        if (at.set.amount + sums_.amount[barrel] > sums_.amountMost * (1 + Sums::slack)) {
            continue;
        }
        next.set = at.set;
        next.set.add(sums_, barrel, at.pairs[barrel]);
        const double* pairs = sums_.pairs(barrel);
        // A set goes on with later barrels only, unless one of it may be a part.
        const std::size_t from = sums_.partsMost > 0 ? 0 : barrel + 1;
        for (std::size_t j = from; j < sums_.count; ++j) {
            next.pairs[j] = at.pairs[j] + pairs[j];
        }
        in_.push_back(barrel);
        visit(level + 1, barrel + 1);
        in_.pop_back();
    }
}

void Enumeration::lookAtWhole(const Level& at, std::size_t begin)
{
    const double numerator = at.set.numerator;
    const double amount = at.set.amount;
    for (std::size_t j = begin; j < sums_.count; ++j) {
        const double all = amount + sums_.amount[j];
        if (numerator + 2 * at.pairs[j] + sums_.own[j] < kept_.limit() * all * all) {
            offerWhole(at, j);
        }
    }
    count(sums_.count - begin);
}

void Enumeration::offerWhole(const Level& at, std::size_t barrel)
{
    if (at.set.keepsWith(sums_, barrel)) {
        std::vector<std::size_t> barrels = in_;
        barrels.push_back(barrel);
        take_(barrels, std::vector<double>(barrels.size(), 1));
    }
}

void Enumeration::lookAtPart(const Level& at)
{
    const double a = at.set.numerator;
    const bool alone = in_.empty();  // then any share comes to the same
    const double v = at.set.amount;
    for (std::size_t j = 0; j < sums_.count; ++j) {
        const double all = sums_.amount[j];
        const double b = at.pairs[j];
        const double c = sums_.own[j];
        // What the best share comes to without bounds: (A C - B^2) over (A - 2 B v + C v^2).
        const double most = alone ? all * all : a * all * all - 2 * b * v * all + c * v * v;
        if ((alone ? c : a * c - b * b) < kept_.limit() * most) {
            offerPart(at, j);
        }
    }
    count(sums_.count);
}

void Enumeration::offerPart(const Level& at, std::size_t barrel)
{
    if (isIn(barrel)) {
        return;
    }
    const auto share = bestShare(sums_, at.set, barrel, at.pairs[barrel]);
    if (!share) {
        return;
    }
    const double all = sums_.amount[barrel] * *share;
    const double numerator =
        at.set.numerator + *share * (2 * at.pairs[barrel] + *share * sums_.own[barrel]);
    const double amount = at.set.amount + all;
    if (numerator < kept_.limit() * amount * amount) {
        std::vector<std::size_t> barrels = in_;
        barrels.push_back(barrel);
        std::vector<double> shares(barrels.size(), 1);
        shares.back() = *share;
        take_(barrels, shares);
    }
}

void Enumeration::lookAtTwoParts(const Level& at)
{
    const bool alone = in_.empty();  // then what they come to falls with none of the set
    for (std::size_t i = 0; i < sums_.count && !stopped_; ++i) {
        for (std::size_t j = i + 1; j < sums_.count; ++j) {
            if (alone || TwoParts(sums_, at.set, i, j, at.pairs).mayFallBelow(kept_.limit())) {
                offerTwoParts(at, i, j);
            }
        }
        count(sums_.count - i - 1);
    }
}

void Enumeration::offerTwoParts(const Level& at, std::size_t first, std::size_t second)
{
    if (isIn(first) || isIn(second)) {
        return;
    }
    const auto best = bestTwoShares(sums_, at.set, first, second, at.pairs);
    if (!best || !(TwoParts(sums_, at.set, first, second, at.pairs).at((*best)[0], (*best)[1]) <
                   kept_.limit())) {
        return;
    }
    std::vector<std::size_t> barrels = in_;
    barrels.insert(barrels.end(), {first, second});
    std::vector<double> shares(barrels.size(), 1);
    shares[shares.size() - 2] = (*best)[0];
    shares.back() = (*best)[1];
    take_(barrels, shares);
}

}  // namespace spile::blend
