#include "core/panel/flight_order.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <numeric>
#include <rapidcheck/gtest.h>

namespace spile::panel {

namespace {

std::vector<Soundness> anyFlight()
{
    return *rc::gen::container<std::vector<Soundness>>(
        rc::gen::element(Soundness::Clean, Soundness::Suspect, Soundness::Sour));
}

bool holdsEachOnce(std::vector<std::size_t> order, std::size_t n)
{
    std::vector<std::size_t> all(n);
    std::iota(all.begin(), all.end(), std::size_t{0});
    std::sort(order.begin(), order.end());
    return order == all;
}

}  // namespace

RC_GTEST_PROP(DrawOrder, IsStableAndNeverGoesBackToACleanerBarrel, ())
{
    const std::vector<Soundness> barrels = anyFlight();
    const auto order = drawOrder(barrels);
    RC_ASSERT(holdsEachOnce(order, barrels.size()));
    for (std::size_t i = 1; i < order.size(); ++i) {
        const auto before = barrels[order[i - 1]];
        const auto after = barrels[order[i]];
        RC_ASSERT((before < after || (before == after && order[i - 1] < order[i])));
    }
}

RC_GTEST_PROP(GlassOrder, TakesEachGlassOnceAndCleanOnesFirst, ())
{
    const std::vector<Soundness> glasses = anyFlight();
    const auto flight = *rc::gen::arbitrary<int>();
    const auto place = *rc::gen::arbitrary<int>();
    const auto order = glassOrder(glasses, flight, place);
    RC_ASSERT(holdsEachOnce(order, glasses.size()));
    RC_ASSERT(order == glassOrder(glasses, flight, place));
    RC_ASSERT(std::is_partitioned(order.begin(), order.end(), [&](std::size_t glass) {
        return glasses[glass] == Soundness::Clean;
    }));
}

RC_GTEST_PROP(GlassOrder, LetsEachGlassComeInEachPlaceEquallyOften, ())
{
    const auto n = *rc::gen::inRange<std::size_t>(1, 9);
    const bool isClean = *rc::gen::arbitrary<bool>();
    const std::vector glasses(n, isClean ? Soundness::Clean : Soundness::Sour);
    const auto flight = *rc::gen::inRange(0, 100);
    const int tasters = static_cast<int>(n % 2 == 0 ? n : 2 * n);
    std::map<std::pair<std::size_t, std::size_t>, int> count;
    for (int place = 0; place < tasters; ++place) {
        const auto order = glassOrder(glasses, flight, place);
        for (std::size_t i = 0; i < n; ++i) {
            ++count[{i, order[i]}];
        }
    }
    RC_ASSERT(count.size() == n * n);
    for (const auto& [where, times] : count) {
        RC_ASSERT(times == tasters / static_cast<int>(n));
    }
}

}  // namespace spile::panel
