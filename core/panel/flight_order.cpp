#include "core/panel/flight_order.hpp"

#include "core/panel/serving_order.hpp"

#include <algorithm>
#include <numeric>

namespace spile::panel {

std::vector<std::size_t> drawOrder(std::span<const Soundness> barrels)
{
    std::vector<std::size_t> order(barrels.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return barrels[a] < barrels[b]; });
    return order;
}

// Appends `glasses` in the order of a row of the design.
static void appendRow(const std::vector<std::size_t>& glasses, long long row,
                      std::vector<std::size_t>& order)
{
    if (glasses.empty()) {
        return;
    }
    const auto n = static_cast<int>(glasses.size());
    for (const int glass : williamsRow(n, static_cast<int>(row % (2LL * n)))) {
        order.push_back(glasses[static_cast<std::size_t>(glass)]);
    }
}

std::vector<std::size_t> glassOrder(std::span<const Soundness> glasses, int flight, int place)
{
    std::vector<std::size_t> clean;
    std::vector<std::size_t> others;
    for (std::size_t i = 0; i < glasses.size(); ++i) {
        (glasses[i] == Soundness::Clean ? clean : others).push_back(i);
    }
    const long long row = static_cast<long long>(flight) + place;
    std::vector<std::size_t> order;
    appendRow(clean, row, order);
    appendRow(others, row, order);
    return order;
}

}  // namespace spile::panel
