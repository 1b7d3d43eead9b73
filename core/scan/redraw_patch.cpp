#include "core/scan/redraw_patch.hpp"

#include <algorithm>
#include <cmath>

namespace spile::scan::redraw {

std::size_t Patch::indexOf(Spot spot) const
{
    const auto last = static_cast<float>(side_ - 1);
    const auto pixel = [&](float modules) {
        const float at = (modules + static_cast<float>(margin_)) * perModule;
        return at > 0 ? static_cast<int>(std::min(at, last)) : 0;  // also what is no number
    };
    return indexAt(pixel(spot.y), pixel(spot.x), side_);
}

void Patch::take(std::span<const Plane> planes, const Place& place, int first, int end)
{
    margin_ = -first;
    side_ = (end - first) * perModule;
    const auto start = 0.5F + static_cast<float>(first * perModule);
    const auto count = indexAt(side_, 0, side_);
    raw_.resize(count);
    float scale = 1;
    std::size_t which = 0;
    while (which + 1 < planes.size() && place.module() * scale > 1.6F * perModule) {
        ++which;
        scale *= 0.5F;
    }
    const Plane& plane = planes[which];
    const Spot right = scale / perModule * place.along;
    const Spot below = scale / perModule * place.down;
    const auto lastX = static_cast<float>(plane.width - 1);
    const auto lastY = static_cast<float>(plane.height - 1);
    for (int y = 0; y < side_; ++y) {
        Spot spot = scale * place.origin + start * right + (static_cast<float>(y) + start) * below -
                    Spot{0.5F, 0.5F};
        float* out = raw_.data() + static_cast<std::ptrdiff_t>(y) * side_;
        for (int x = 0; x < side_; ++x, spot = spot + right) {
            const float atX = std::clamp(spot.x, 0.0F, lastX);
            const float atY = std::clamp(spot.y, 0.0F, lastY);
            const int left = std::min(static_cast<int>(atX), std::max(plane.width - 2, 0));
            const int top = std::min(static_cast<int>(atY), std::max(plane.height - 2, 0));
            const int nextX = plane.width > 1 ? 1 : 0;
            const std::uint8_t* here = plane.row(top) + left;
            const std::uint8_t* under = here + (plane.height > 1 ? plane.width : 0);
            const float fx = atX - static_cast<float>(left);
            const float fy = atY - static_cast<float>(top);
            const float upper =
                static_cast<float>(here[0]) * (1 - fx) + static_cast<float>(here[nextX]) * fx;
            const float lower =
                static_cast<float>(under[0]) * (1 - fx) + static_cast<float>(under[nextX]) * fx;
            out[x] = upper * (1 - fy) + lower * fy;
        }
    }
    normalise();
}

// Smooth, then the difference from the mean of 7 x 7 modules in deviations of these.
void Patch::normalise()
{
    constexpr int radius = 7 * perModule / 2;
    const auto count = raw_.size();
    levels_.resize(count);
    contrast_.resize(count);
    const auto rowAt = [this](std::vector<float>& all, int y) {
        return all.data() + static_cast<std::ptrdiff_t>(std::clamp(y, 0, side_ - 1)) * side_;
    };
    for (int y = 0; y < side_; ++y) {
        const float* above = rowAt(raw_, y - 1);
        const float* here = rowAt(raw_, y);
        const float* below = rowAt(raw_, y + 1);
        float* out = rowAt(levels_, y);
        const auto column = [&](int x) { return above[x] + 2 * here[x] + below[x]; };
        out[0] = (3 * column(0) + column(1)) / 16;
        for (int x = 1; x < side_ - 1; ++x) {
            out[x] = (column(x - 1) + 2 * column(x) + column(x + 1)) / 16;
        }
        out[side_ - 1] = (3 * column(side_ - 1) + column(side_ - 2)) / 16;
    }
    const auto width = static_cast<std::size_t>(side_);
    columns_.assign(width, 0);
    squares_.assign(width, 0);
    const auto addRow = [&](int y, float sign) {
        const float* row = rowAt(levels_, y);
        for (std::size_t x = 0; x < width; ++x) {
            columns_[x] += sign * row[x];
            squares_[x] += sign * row[x] * row[x];
        }
    };
    for (int y = -radius; y < radius; ++y) {
        addRow(y, 1);
    }
    constexpr float area = (2 * radius + 1) * (2 * radius + 1);
    for (int y = 0; y < side_; ++y) {
        addRow(y + radius, 1);
        const auto at = [this](int x) {
            return static_cast<std::size_t>(std::clamp(x, 0, side_ - 1));
        };
        float sum = 0;
        float square = 0;
        for (int x = -radius; x < radius; ++x) {
            sum += columns_[at(x)];
            square += squares_[at(x)];
        }
        const float* row = rowAt(levels_, y);
        std::int8_t* out = contrast_.data() + static_cast<std::ptrdiff_t>(y) * side_;
        for (int x = 0; x < side_; ++x) {
            sum += columns_[at(x + radius)];
            square += squares_[at(x + radius)];
            const float mean = sum / area;
            const float variance = std::max(square / area - mean * mean, 9.0F);
            const float darker = (mean - row[x]) / std::sqrt(variance) * (100 / 1.5F);
            out[x] = static_cast<std::int8_t>(std::clamp(darker, -100.0F, 100.0F));
            sum -= columns_[at(x - radius)];
            square -= squares_[at(x - radius)];
        }
        addRow(y - radius, -1);
    }
}

}  // namespace spile::scan::redraw
