#include "core/scan/redraw_places.hpp"

#include <algorithm>

namespace spile::scan::redraw {

static constexpr std::size_t mostCores = 14;
static constexpr std::size_t mostOfAKind = 6;
static constexpr std::size_t mostAlone = 5;  // cores

// `topLeft` is the centre of the finder there.
static Place placeOf(Spot topLeft, Spot along, Spot down, float doubt)
{
    return {topLeft - 3.5F * along - 3.5F * down, along, down, doubt};
}

// How far the spacing of cores may be from what their size says.
static bool isLikely(float ratio) { return ratio > 0.72F && ratio < 1.35F; }

static bool isAlike(float area, float other, float most)
{
    return std::max(area, other) <= most * std::min(area, other);
}

void PlaceFinder::addThree(const Core& corner, const Core& right, const Core& below, int size)
{
    const auto apart = static_cast<float>(size - 7);
    const Spot along = right.centre - corner.centre;
    const Spot down = below.centre - corner.centre;
    const float turn = cross(along, down);
    const float a = length(along);
    const float b = length(down);
    if (turn < 0.5F * a * b || a > 2.6F * b || b > 2.6F * a) {
        return;
    }
    const auto [least, greatest] = std::minmax({corner.area, right.area, below.area});
    const float area = std::cbrt(corner.area * right.area * below.area);
    const float ratio = std::sqrt(turn / area) * 3 / apart;
    if (isAlike(least, greatest, 3.2F) && isLikely(ratio)) {
        const float doubt =
            std::abs(std::log(ratio)) - 0.15F * (corner.score + right.score + below.score);
        three_.push_back(placeOf(corner.centre, (1 / apart) * along, (1 / apart) * down, doubt));
        three_.back().isWhole = true;
    }
}

void PlaceFinder::fromThree(std::span<const Core> cores, int size)
{
    for (const Core& corner : cores) {
        for (const Core& right : cores) {
            for (const Core& below : cores) {
                if (&corner != &right && &corner != &below && &right != &below) {
                    addThree(corner, right, below, size);
                }
            }
        }
    }
}

// Two that stand along one side.
void PlaceFinder::addTwo(const Core& from, const Core& to, int size)
{
    const auto apart = static_cast<float>(size - 7);
    const Spot step = to.centre - from.centre;
    const float distance = length(step);
    const Spot unit = (1 / distance) * step;
    const auto along = [&](Spot axis) { return std::abs(dot(axis, unit)) / length(axis); };
    const bool isRight = along(from.right) > along(from.down);
    const Spot parallel = isRight ? from.right : from.down;
    Spot across = isRight ? from.down : from.right;
    if (cross(unit, across) < 0) {
        across = -1 * across;
    }
    const float ratio = distance / apart / (length(parallel) * 2 / 3);
    if (along(parallel) < 0.9F || !isLikely(ratio)) {
        return;
    }
    const Spot module = (1 / apart) * step;
    const Spot other = (ratio * 2 / 3) * across;
    const float doubt = std::abs(std::log(ratio)) - 0.2F * (from.score + to.score);
    // From the top left to the top right; or from the bottom left to the top left.
    two_.push_back(placeOf(from.centre, module, other, doubt));
    two_.push_back(placeOf(to.centre, other, -1 * module, doubt));
}

// Two that stand across the diagonal: step = down - along, each along one of the axes `a` and `b`.
void PlaceFinder::addDiagonal(const Core& right, const Core& below, Spot a, Spot b, int size)
{
    const auto apart = static_cast<float>(size - 7);
    const Spot step = (1 / apart) * (below.centre - right.centre);
    const float area = cross(a, b);
    if (std::abs(area) < 0.3F * length(a) * length(b)) {
        return;
    }
    const Spot along = (-cross(step, b) / area) * a;
    const Spot down = (cross(a, step) / area) * b;
    const float ratioA = length(along) / length(a) * 1.5F;
    const float ratioB = length(down) / length(b) * 1.5F;
    if (cross(along, down) > 0 && isLikely(ratioA) && isLikely(ratioB)) {
        const float doubt = 0.5F * (std::abs(std::log(ratioA)) + std::abs(std::log(ratioB))) -
                            0.2F * (right.score + below.score);
        two_.push_back(placeOf(right.centre - apart * along, along, down, doubt));
    }
}

void PlaceFinder::fromTwo(std::span<const Core> cores, int size)
{
    for (const Core& one : cores) {
        for (const Core& other : cores) {
            if (&one == &other || !isAlike(one.area, other.area, 3.2F)) {
                continue;
            }
            if (isAlike(one.area, other.area, 2.5F)) {
                addTwo(one, other, size);
            }
            addDiagonal(one, other, one.right, other.down, size);
            addDiagonal(one, other, one.down, other.right, size);
        }
    }
}

void PlaceFinder::fromOne(std::span<const Core> cores)
{
    for (const Core& core : cores) {
        one_.push_back(placeOf(core.centre, 2.0F / 3 * core.right, 2.0F / 3 * core.down, 0));
        one_.back().isAlone = true;
    }
}

static void addBest(std::vector<Place>& from, std::vector<Place>& to)
{
    std::sort(from.begin(), from.end(),
              [](const Place& a, const Place& b) { return a.doubt < b.doubt; });
    const auto count = static_cast<std::ptrdiff_t>(std::min(from.size(), mostOfAKind));
    to.insert(to.end(), from.begin(), from.begin() + count);
}

void PlaceFinder::find(std::vector<Core>& cores, int size, std::vector<Place>& places)
{
    std::sort(cores.begin(), cores.end(),
              [](const Core& a, const Core& b) { return a.score > b.score; });
    const std::span<const Core> best(cores.data(), std::min(cores.size(), mostCores));
    three_.clear();
    two_.clear();
    one_.clear();
    fromThree(best, size);
    fromTwo(best, size);
    fromOne(best.first(std::min(best.size(), mostAlone)));
    places.clear();
    addBest(three_, places);
    addBest(two_, places);
    places.insert(places.end(), one_.begin(), one_.end());
}

}  // namespace spile::scan::redraw
