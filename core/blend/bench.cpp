#include "core/blend/bench.hpp"

#include "core/base/simulated.hpp"
#include "core/blend/exchange.hpp"

#include <algorithm>
#include <numeric>

namespace spile::blend {

namespace {

// Enough to come within some hundredths of the best in most cellars: see tests/bench.
constexpr int exchangeStarts = 300;

class Search {
public:
    Search(const Problem& problem, const Job& job, const OnBetter& onBetter)
        : problem_(problem), job_(job), onBetter_(onBetter), sums_(problem)
    {
    }

    Found run()
    {
        const auto take = [this](const auto& barrels, const auto& shares) {
            keep(barrels, shares);
        };
        SeededRandom random(1);
        Exchange exchange(sums_, take);
        exchange.run(exchangeStarts, random);
        Enumeration all(sums_, kept_, take, job_);
        Found found;
        found.proven = all.run();
        found.bound = kept_.best();
        if (!found.proven) {
            found.bound = std::min(found.bound, leastDistance(sums_, open(all.firstOpen())));
        }
        if (kept_.isEmpty()) {
            found.bound = 0;
            found.inTheWay = whatStandsInTheWay(exchange.nearest());
        }
        found.blends = std::move(kept_).taken();
        return found;
    }

private:
    void keep(const std::vector<std::size_t>& barrels, const std::vector<double>& shares)
    {
        std::vector<Share> made;
        for (std::size_t i = 0; i < barrels.size(); ++i) {
            if (shares[i] > 0) {
                made.push_back({barrels[i], shares[i] * problem_.barrels[barrels[i]].amount});
            }
        }
        std::sort(made.begin(), made.end(),
                  [](const Share& a, const Share& b) { return a.barrel < b.barrel; });
        const Blend blend = blendOf(problem_, std::move(made));
        if (kept_.offer(blend) && onBetter_) {
            onBetter_(blend);
        }
    }

    // The barrels that sets not yet looked at may have. A part barrel may come from any place.
    [[nodiscard]] std::vector<std::size_t> open(std::size_t first) const
    {
        std::vector<std::size_t> barrels(sums_.count);
        std::iota(barrels.begin(), barrels.end(), std::size_t{0});
        if (sums_.partsMost == 0) {
            barrels.erase(barrels.begin(), barrels.begin() + static_cast<std::ptrdiff_t>(first));
        }
        return barrels;
    }

    [[nodiscard]] std::vector<InTheWay> whatStandsInTheWay(
        const std::vector<std::size_t>& nearest) const
    {
        std::vector<Share> shares;
        shares.reserve(nearest.size());
        for (const std::size_t barrel : nearest) {
            shares.push_back({barrel, problem_.barrels[barrel].amount});
        }
        const Blend blend = blendOf(problem_, shares);
        std::vector<InTheWay> all;
        const double slack = Sums::slack;
        if (blend.amount < sums_.amountLeast * (1 - slack)) {
            all.push_back({InTheWay::What::Amount, 0, blend.amount, sums_.amountLeast});
        } else if (blend.amount > sums_.amountMost * (1 + slack)) {
            all.push_back({InTheWay::What::Amount, 0, blend.amount, sums_.amountMost});
        }
        for (const Bound& bound : boundsOf(problem_)) {
            const double reached = bound.wish ? blend.mean[*bound.wish] : blend.strength;
            if (bound.upper ? reached > bound.value + slack : reached < bound.value - slack) {
                all.push_back({bound.wish ? InTheWay::What::Attribute : InTheWay::What::Strength,
                               bound.wish.value_or(0), reached, bound.value});
            }
        }
        return all;
    }

    const Problem& problem_;
    const Job& job_;
    const OnBetter& onBetter_;
    Sums sums_;
    BestKept kept_{blendsKept};
};

}  // namespace

Result<Found> bestBlends(const Problem& problem, const Job& job, const OnBetter& onBetter)
{
    SPILE_TRY(checkProblem(problem));
    return Search(problem, job, onBetter).run();
}

std::vector<Blend> byChance(std::vector<Blend> blends)
{
    std::stable_sort(blends.begin(), blends.end(),
                     [](const Blend& a, const Blend& b) { return a.chance > b.chance; });
    return blends;
}

}  // namespace spile::blend
