// The bench beside a search of the test's own: every set of barrels, each amount of a part tried.
#include "core/blend/bench.hpp"
#include "core/blend/parts.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace spile::blend {

namespace {

// At its full size always: a range of RapidCheck's grows with the number of the case.
template <class T>
T anyOf(T low, T below)
{
    return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange<T>(low, below));
}

double anyNumber(double low, double high) { return low + (high - low) * anyOf(0, 1'000'001) / 1e6; }

Problem anyProblem(std::size_t barrelsMost, std::size_t partsMost)
{
    Problem problem;
    const auto attributes = anyOf<std::size_t>(1, 5);
    for (std::size_t i = 0; i < attributes; ++i) {
        Wish wish{"attribute " + std::to_string(i), anyNumber(2, 8), anyNumber(0.2, 3)};
        if (anyOf(0, 3) == 0) {
            wish.low = *wish.target - anyNumber(0.2, 3);
            wish.high = *wish.target + anyNumber(0.2, 3);
        }
        problem.wishes.push_back(wish);
    }
    const auto count = anyOf<std::size_t>(1, barrelsMost + 1);
    for (std::size_t i = 0; i < count; ++i) {
        Barrel barrel{"barrel " + std::to_string(i), anyNumber(20, 230), anyNumber(0.08, 0.15)};
        for (std::size_t a = 0; a < attributes; ++a) {
            barrel.mean.push_back(anyNumber(1, 9));
            barrel.deviation.push_back(anyNumber(0, 0.8));
        }
        problem.barrels.push_back(barrel);
    }
    problem.limits.barrelsMost = anyOf<std::size_t>(1, 7);
    problem.limits.partsMost = partsMost;
    problem.limits.leastShare = anyNumber(0, 0.5);
    if (*rc::gen::arbitrary<bool>()) {
        problem.limits.amountLeast = anyNumber(0, 300);
        problem.limits.amountMost = problem.limits.amountLeast + anyNumber(50, 600);
    }
    if (*rc::gen::arbitrary<bool>()) {
        problem.limits.strengthLeast = anyNumber(0.08, 0.12);
        problem.limits.strengthMost = *problem.limits.strengthLeast + anyNumber(0.005, 0.03);
    }
    return problem;
}

// By the definition, with a slack that is given.
bool keepsBounds(const Problem& problem, const Blend& blend, double slack)
{
    const auto within = [slack](double value, const std::optional<double>& low,
                                const std::optional<double>& high) {
        return value >= low.value_or(value) - slack && value <= high.value_or(value) + slack;
    };
    bool keeps = within(blend.amount, problem.limits.amountLeast - blend.amount * slack, {}) &&
                 within(blend.amount, {}, problem.limits.amountMost.value_or(1e18) * (1 + slack)) &&
                 within(blend.strength, problem.limits.strengthLeast, problem.limits.strengthMost);
    for (std::size_t a = 0; a < problem.wishes.size(); ++a) {
        keeps = keeps && within(blend.mean[a], problem.wishes[a].low, problem.wishes[a].high);
    }
    return keeps;
}

struct Best {
    double distance = std::numeric_limits<double>::infinity();
    std::size_t sets = 0;
};

template <class Look>
void forEachSet(const Problem& problem, const Look& look)
{
    const std::size_t count = problem.barrels.size();
    for (std::size_t bits = 1; bits < std::size_t{1} << count; ++bits) {
        std::vector<Share> shares;
        for (std::size_t i = 0; i < count; ++i) {
            if ((bits >> i & 1U) != 0) {
                shares.push_back({i, problem.barrels[i].amount});
            }
        }
        if (shares.size() <= problem.limits.barrelsMost) {
            look(shares);
        }
    }
}

Best bestOfWhole(const Problem& problem, double slack)
{
    Best best;
    forEachSet(problem, [&](const std::vector<Share>& shares) {
        const Blend blend = blendOf(problem, shares);
        if (keepsBounds(problem, blend, slack)) {
            ++best.sets;
            best.distance = std::min(best.distance, blend.distance);
        }
    });
    return best;
}

// The least distance of all sets with one barrel in one of so many amounts.
double bestOfTriedParts(const Problem& problem, int steps)
{
    double best = std::numeric_limits<double>::infinity();
    forEachSet(problem, [&](const std::vector<Share>& whole) {
        for (std::size_t part = 0; part < whole.size(); ++part) {
            for (int step = 0; step <= steps; ++step) {
                std::vector<Share> shares = whole;
                const double least = problem.limits.leastShare;
                shares[part].amount *= least + (1 - least) * step / steps;
                if (!(shares[part].amount > 0)) {
                    continue;
                }
                const Blend blend = blendOf(problem, shares);
                if (keepsBounds(problem, blend, 0)) {
                    best = std::min(best, blend.distance);
                }
            }
        }
    });
    return best;
}

// The same with two of them.
double bestOfTriedTwoParts(const Problem& problem, int steps)
{
    double best = std::numeric_limits<double>::infinity();
    const double least = problem.limits.leastShare;
    const auto tryShares = [&](std::vector<Share> shares, std::size_t i, std::size_t j) {
        const Share first = shares[i];
        const Share second = shares[j];
        for (int step = 0; step < (steps + 1) * (steps + 1); ++step) {
            shares[i].amount = first.amount * (least + (1 - least) * (step / (steps + 1)) / steps);
            shares[j].amount = second.amount * (least + (1 - least) * (step % (steps + 1)) / steps);
            if (!(shares[i].amount > 0) || !(shares[j].amount > 0)) {
                continue;
            }
            const Blend blend = blendOf(problem, shares);
            if (blend.distance < best && keepsBounds(problem, blend, 0)) {
                best = blend.distance;
            }
        }
    };
    forEachSet(problem, [&](const std::vector<Share>& whole) {
        for (std::size_t i = 0; i < whole.size(); ++i) {
            for (std::size_t j = i + 1; j < whole.size(); ++j) {
                tryShares(whole, i, j);
            }
        }
    });
    return best;
}

void isSound(const Problem& problem, const Found& found)
{
    RC_ASSERT(found.proven);
    RC_ASSERT(found.blends.empty() != found.inTheWay.empty());
    for (std::size_t i = 0; i < found.blends.size(); ++i) {
        const Blend& blend = found.blends[i];
        RC_ASSERT((i == 0 || blend.distance >= found.blends[i - 1].distance));
        RC_ASSERT(keepsBounds(problem, blend, 1e-7));
        RC_ASSERT(blend.shares.size() <= problem.limits.barrelsMost);
        std::size_t parts = 0;
        for (const Share& share : blend.shares) {
            const double all = problem.barrels[share.barrel].amount;
            RC_ASSERT(share.amount > 0);
            RC_ASSERT(share.amount <= all);
            RC_ASSERT(share.amount >= problem.limits.leastShare * all * (1 - 1e-9));
            parts += share.amount < all ? 1 : 0;
        }
        RC_ASSERT(parts <= problem.limits.partsMost);
    }
}

}  // namespace

// 5 times 100 cases: of up to 12 barrels.
RC_GTEST_PROP(Bench, FindsTheBestOfWholeBarrels, ())
{
    for (int round = 0; round < 5; ++round) {
        const Problem problem = anyProblem(12, 0);
        const auto found = bestBlends(problem);
        RC_ASSERT(found.has_value());
        isSound(problem, *found);
        const Best sure = bestOfWhole(problem, 0);
        const Best loose = bestOfWhole(problem, 1e-8);
        RC_ASSERT(found->blends.size() >= std::min(sure.sets, blendsKept));
        RC_ASSERT(found->blends.size() <= std::min(loose.sets, blendsKept));
        if (!found->blends.empty()) {
            RC_ASSERT(found->blends[0].distance <= sure.distance * (1 + 1e-9) + 1e-12);
            RC_ASSERT(found->blends[0].distance >= loose.distance * (1 - 1e-9) - 1e-12);
        }
    }
}

RC_GTEST_PROP(Bench, IsNeverFartherThanAnyTriedAmountOfAPart, ())
{
    const Problem problem = anyProblem(8, 1);
    const auto found = bestBlends(problem);
    RC_ASSERT(found.has_value());
    isSound(problem, *found);
    const double tried = bestOfTriedParts(problem, 40);
    if (std::isfinite(tried)) {
        RC_ASSERT(!found->blends.empty());
        RC_ASSERT(found->blends[0].distance <= tried + 1e-9);
    }
}

RC_GTEST_PROP(Bench, IsNeverFartherThanAnyTriedAmountsOfTwoParts, ())
{
    const Problem problem = anyProblem(7, 2);
    const auto found = bestBlends(problem);
    RC_ASSERT(found.has_value());
    isSound(problem, *found);
    const double tried = std::min(bestOfTriedTwoParts(problem, 16), bestOfTriedParts(problem, 20));
    if (std::isfinite(tried)) {
        RC_ASSERT(!found->blends.empty());
        RC_ASSERT(found->blends[0].distance <= tried + 1e-9);
    }
}

RC_GTEST_PROP(Bench, BoundsWhatItHasNotLookedAt, ())
{
    Problem problem = anyProblem(10, anyOf<std::size_t>(0, 3));
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < problem.barrels.size(); ++i) {
        all.push_back(i);
    }
    const double bound = leastDistance(Sums(problem), all);
    const auto found = bestBlends(problem);
    RC_ASSERT(found.has_value());
    if (!found->blends.empty()) {
        RC_ASSERT(bound <= found->blends[0].distance + 1e-9);
    }
}

RC_GTEST_PROP(Bench, NamesABoundThatIsBroken, ())
{
    Problem problem = anyProblem(8, 0);
    problem.wishes[0].low = 9.5;
    problem.wishes[0].high = 10;
    const auto found = bestBlends(problem);
    RC_ASSERT(found.has_value());
    RC_ASSERT(found->blends.empty());
    const auto way = std::find_if(
        found->inTheWay.begin(), found->inTheWay.end(),
        [](const InTheWay& one) { return one.what == InTheWay::What::Attribute && one.wish == 0; });
    RC_ASSERT(way != found->inTheWay.end());
    RC_ASSERT(way->bound == 9.5);
    RC_ASSERT(way->reached < 9.5);
}

}  // namespace spile::blend
