#include "core/scan/redraw_cores.hpp"

#include <algorithm>
#include <cstring>

namespace spile::scan::redraw {

int CoreFinder::rootOf(int run)
{
    while (runs_[static_cast<std::size_t>(run)].parent != run) {
        Run& here = runs_[static_cast<std::size_t>(run)];
        here.parent = runs_[static_cast<std::size_t>(here.parent)].parent;
        run = here.parent;
    }
    return run;
}

void CoreFinder::join(int a, int b)
{
    const int rootA = rootOf(a);
    const int rootB = rootOf(b);
    runs_[static_cast<std::size_t>(std::max(rootA, rootB))].parent = std::min(rootA, rootB);
}

// The first place from `x` on in `row` that holds `value`, or the row's end.
static int nextOf(const std::uint8_t* row, int x, int width, int value)
{
    const void* found = std::memchr(row + x, value, static_cast<std::size_t>(width - x));
    return found == nullptr ? width
                            : static_cast<int>(static_cast<const std::uint8_t*>(found) - row);
}

void CoreFinder::collectRuns(const Plane& dark)
{
    runs_.clear();
    std::size_t above = 0;  // the first run of the row above that may touch
    for (int y = 0; y < dark.height; ++y) {
        const std::uint8_t* row = dark.row(y);
        const std::size_t rowBegin = runs_.size();
        for (int begin = nextOf(row, 0, dark.width, 1); begin < dark.width;) {
            const int end = nextOf(row, begin, dark.width, 0);
            const int index = static_cast<int>(runs_.size());
            runs_.push_back({y, begin, end, index, -1});
            while (above < rowBegin && runs_[above].end <= begin) {
                ++above;
            }
            for (std::size_t i = above; i < rowBegin && runs_[i].begin < end; ++i) {
                join(index, static_cast<int>(i));
            }
            begin = nextOf(row, end, dark.width, 1);
        }
        above = rowBegin;
    }
}

void CoreFinder::collectIslands()
{
    islands_.clear();
    islandOf_.assign(runs_.size(), -1);
    for (std::size_t i = 0; i < runs_.size(); ++i) {
        const int index = static_cast<int>(i);
        const Run run = runs_[i];
        int& island = islandOf_[static_cast<std::size_t>(rootOf(index))];
        if (island < 0) {
            island = static_cast<int>(islands_.size());
            islands_.push_back({0, run.begin, run.end, run.y, run.y, index, index});
        }
        Island& all = islands_[static_cast<std::size_t>(island)];
        all.area += run.end - run.begin;
        all.left = std::min(all.left, run.begin);
        all.right = std::max(all.right, run.end);
        all.bottom = run.y;
        if (all.last != index) {
            runs_[static_cast<std::size_t>(all.last)].next = index;
            all.last = index;
        }
    }
}

// Fit the parallelogram with the moments of the island: in the frame where they are those of a
// square, only its turn is left to find.
bool CoreFinder::measure(const Island& island, Core& core)
{
    double sumX = 0;
    double sumY = 0;
    double sumXX = 0;
    double sumXY = 0;
    double sumYY = 0;
    outline_.clear();
    for (int i = island.first; i >= 0; i = runs_[static_cast<std::size_t>(i)].next) {
        const Run& run = runs_[static_cast<std::size_t>(i)];
        const double count = run.end - run.begin;
        const double middle = 0.5 * (run.begin + run.end) - island.left;
        const double y = run.y + 0.5 - island.top;
        sumX += count * middle;
        sumY += count * y;
        sumXX += count * (middle * middle + count * count / 12);
        sumXY += count * middle * y;
        sumYY += count * (y * y + 1.0 / 12);
        const auto top = static_cast<float>(run.y);
        for (const float side : {static_cast<float>(run.begin), static_cast<float>(run.end)}) {
            outline_.push_back({side, top});
            outline_.push_back({side, top + 1});
        }
    }
    const double area = island.area;
    const double x = sumX / area;
    const double y = sumY / area;
    const double xx = sumXX / area - x * x;
    const double xy = sumXY / area - x * y;
    const double yy = sumYY / area - y * y;
    // Lower triangle l of the Cholesky root of the moments: the island is l times a square.
    const double l11 = std::sqrt(xx);
    const double l21 = xy / l11;
    const double rest = yy - l21 * l21;
    if (!(rest > 1e-3)) {
        return false;
    }
    const double l22 = std::sqrt(rest);
    if (std::max(l11, l22) > 3.5 * std::min(l11, l22)) {
        return false;
    }
    core.centre = {static_cast<float>(x + island.left), static_cast<float>(y + island.top)};
    core.area = static_cast<float>(area);
    for (Spot& spot : outline_) {
        const double dx = (static_cast<double>(spot.x) - x - island.left) / l11;
        spot = {
            static_cast<float>(dx),
            static_cast<float>((static_cast<double>(spot.y) - y - island.top - l21 * dx) / l22)};
    }
    constexpr int turns = 18;
    float least = 1e9F;
    Spot best;
    for (int turn = 0; turn < turns; ++turn) {
        const float angle = 1.5707963F * static_cast<float>(turn) / turns;
        const Spot axis{std::cos(angle), std::sin(angle)};
        Spot low{1e9F, 1e9F};
        Spot high{-1e9F, -1e9F};
        for (const Spot spot : outline_) {
            const float along = dot(axis, spot);
            const float across = cross(axis, spot);
            low = {std::min(low.x, along), std::min(low.y, across)};
            high = {std::max(high.x, along), std::max(high.y, across)};
        }
        const float box = (high.x - low.x) * (high.y - low.y);
        if (box < least) {
            least = box;
            best = axis;
        }
    }
    // The island's own area here is area / (l11 l22).
    if (area / (l11 * l22) < 0.66 * static_cast<double>(least)) {
        return false;
    }
    const float half = 1.7320508F;  // of a square's side, in its deviations
    const auto undone = [&](Spot spot) {
        return Spot{static_cast<float>(l11) * spot.x,
                    static_cast<float>(l21) * spot.x + static_cast<float>(l22) * spot.y};
    };
    core.right = half * undone(best);
    core.down = half * undone({-best.y, best.x});
    return true;
}

// The share of dark pixels on the outline of the core's square times `radius`.
static float darkShare(const Plane& dark, const Core& core, float radius)
{
    int count = 0;
    int isDark = 0;
    constexpr int perSide = 6;
    for (int side = 0; side < 4; ++side) {
        for (int i = 0; i < perSide; ++i) {
            const float along = static_cast<float>(2 * i) / perSide - 1;
            const std::array<Spot, 4> places = {Spot{along, -1}, Spot{1, along}, Spot{-along, 1},
                                                Spot{-1, -along}};
            const Spot place = radius * places[static_cast<std::size_t>(side)];
            const Spot at = core.centre + place.x * core.right + place.y * core.down;
            const int x = static_cast<int>(std::floor(at.x));
            const int y = static_cast<int>(std::floor(at.y));
            if (x >= 0 && x < dark.width && y >= 0 && y < dark.height) {
                ++count;
                isDark += dark.row(y)[x];
            }
        }
    }
    return count == 0 ? 0.5F : static_cast<float>(isDark) / static_cast<float>(count);
}

void CoreFinder::find(const Plane& dark, std::vector<Core>& cores)
{
    collectRuns(dark);
    collectIslands();
    for (const Island& island : islands_) {
        const int width = island.right - island.left;
        const int height = island.bottom - island.top + 1;
        if (std::min(width, height) < 4 || std::max(width, height) > 70 || island.area < 16 ||
            5 * island.area < 2 * width * height) {
            continue;
        }
        Core core;
        if (!measure(island, core)) {
            continue;
        }
        const float light = 1 - darkShare(dark, core, 4.0F / 3);
        const float ring = darkShare(dark, core, 2);
        if (light >= 0.7F && ring >= 0.45F) {
            core.score = light + ring;
            cores.push_back(core);
        }
    }
}

}  // namespace spile::scan::redraw
