#include "core/scan/redraw_plane.hpp"

#include <algorithm>
#include <cstring>

namespace spile::scan::redraw {

void Plane::resize(int newWidth, int newHeight)
{
    width = newWidth;
    height = newHeight;
    pixels.resize(picture::pixelBytes(width, height, picture::PixelFormat::Grey8));
}

void gather(const picture::LuminanceView& view, Plane& to)
{
    to.resize(view.width, view.height);
    for (int y = 0; y < view.height; ++y) {
        const std::uint8_t* from = view.data + std::ptrdiff_t{y} * view.rowStride;
        std::uint8_t* out = to.row(y);
        if (view.pixelStride == 1) {
            std::memcpy(out, from, static_cast<std::size_t>(view.width));
            continue;
        }
        for (int x = 0; x < view.width; ++x) {
            out[x] = from[std::ptrdiff_t{x} * view.pixelStride];
        }
    }
}

void halve(const picture::LuminanceView& from, Plane& to)
{
    to.resize(from.width / 2, from.height / 2);
    const std::ptrdiff_t right = from.pixelStride;
    const std::ptrdiff_t below = from.rowStride;
    for (int y = 0; y < to.height; ++y) {
        const std::uint8_t* pixel = from.data + 2 * below * y;
        std::uint8_t* out = to.row(y);
        for (int x = 0; x < to.width; ++x, pixel += 2 * right) {
            const int sum = pixel[0] + pixel[right] + pixel[below] + pixel[below + right];
            out[x] = static_cast<std::uint8_t>((sum + 2) / 4);
        }
    }
}

void twice(const Plane& from, Plane& to)
{
    to.resize(2 * from.width, 2 * from.height);
    const int last = from.width - 1;
    for (int y = 0; y < to.height; ++y) {
        // A new pixel lies a quarter of a pixel beside an old one: 3/4 of that, 1/4 of the next.
        const std::uint8_t* near = from.row(y / 2);
        const std::uint8_t* far =
            from.row(std::clamp(y / 2 + (y % 2 == 0 ? -1 : 1), 0, from.height - 1));
        std::uint8_t* out = to.row(y);
        const auto mixed = [&](int x) { return 3 * near[x] + far[x]; };
        out[0] = static_cast<std::uint8_t>((mixed(0) + 2) / 4);
        for (int x = 0; x < last; ++x) {
            const int left = mixed(x);
            const int right = mixed(x + 1);
            out[2 * x + 1] = static_cast<std::uint8_t>((3 * left + right + 8) / 16);
            out[2 * x + 2] = static_cast<std::uint8_t>((left + 3 * right + 8) / 16);
        }
        out[2 * last + 1] = static_cast<std::uint8_t>((mixed(last) + 2) / 4);
    }
}

void smooth(const Plane& from, Plane& to)
{
    to.resize(from.width, from.height);
    const int last = from.width - 1;
    for (int y = 0; y < from.height; ++y) {
        const std::uint8_t* above = from.row(std::max(y - 1, 0));
        const std::uint8_t* here = from.row(y);
        const std::uint8_t* below = from.row(std::min(y + 1, from.height - 1));
        std::uint8_t* out = to.row(y);
        const auto column = [&](int x) { return above[x] + 2 * here[x] + below[x]; };
        const auto mean = [&](int left, int x, int right) {
            return static_cast<std::uint8_t>((column(left) + 2 * column(x) + column(right) + 8) /
                                             16);
        };
        out[0] = mean(0, 0, std::min(1, last));
        for (int x = 1; x < last; ++x) {
            out[x] = mean(x - 1, x, x + 1);
        }
        out[last] = mean(std::max(last - 1, 0), last, last);
    }
}

void sharpen(const Plane& from, int amount, Plane& to)
{
    to.resize(from.width, from.height);
    const int last = from.width - 1;
    for (int y = 0; y < from.height; ++y) {
        const std::uint8_t* above = from.row(std::max(y - 1, 0));
        const std::uint8_t* here = from.row(y);
        const std::uint8_t* below = from.row(std::min(y + 1, from.height - 1));
        std::uint8_t* out = to.row(y);
        const auto column = [&](int x) { return above[x] + here[x] + below[x]; };
        const auto sharp = [&](int left, int x, int right) {
            // 7282 / 65536 is a ninth.
            const int nine = column(left) + column(x) + column(right);
            const int value = here[x] + amount * here[x] - ((amount * nine * 7282 + 32768) >> 16);
            return static_cast<std::uint8_t>(std::clamp(value, 0, 255));
        };
        out[0] = sharp(0, 0, std::min(1, last));
        for (int x = 1; x < last; ++x) {
            out[x] = sharp(x - 1, x, x + 1);
        }
        out[last] = sharp(std::max(last - 1, 0), last, last);
    }
}

// The sums of 2 * radius + 1 columns around each; at the borders the outermost columns repeat.
static void sumAlong(const std::vector<int>& columns, int radius, std::vector<int>& sums)
{
    const int width = static_cast<int>(columns.size());
    const auto column = [&](int x) {
        return columns[static_cast<std::size_t>(std::clamp(x, 0, width - 1))];
    };
    int sum = 0;
    for (int x = -radius; x < radius; ++x) {
        sum += column(x);
    }
    int x = 0;
    const auto step = [&](int added, int taken) {
        sum += added;
        sums[static_cast<std::size_t>(x)] = sum;
        sum -= taken;
    };
    for (; x < std::min(radius, width); ++x) {
        step(column(x + radius), column(x - radius));
    }
    const int* all = columns.data();
    for (; x < width - radius; ++x) {
        step(all[x + radius], all[x - radius]);
    }
    for (; x < width; ++x) {
        step(column(x + radius), column(x - radius));
    }
}

void DarkMap::mark(const Plane& from, int radius, int percent, Plane& to)
{
    to.resize(from.width, from.height);
    const auto width = static_cast<std::size_t>(from.width);
    columns_.assign(width, 0);
    sums_.resize(width);
    const auto rowAt = [&](int y) { return from.row(std::clamp(y, 0, from.height - 1)); };
    for (int y = -radius; y < radius; ++y) {
        const std::uint8_t* row = rowAt(y);
        for (std::size_t x = 0; x < width; ++x) {
            columns_[x] += row[x];
        }
    }
    const auto count = static_cast<float>((2 * radius + 1) * (2 * radius + 1));
    const float share = (1 - static_cast<float>(percent) / 100) / count;
    for (int y = 0; y < from.height; ++y) {
        const std::uint8_t* added = rowAt(y + radius);
        for (std::size_t x = 0; x < width; ++x) {
            columns_[x] += added[x];
        }
        sumAlong(columns_, radius, sums_);
        const std::uint8_t* row = from.row(y);
        std::uint8_t* out = to.row(y);
        for (std::size_t x = 0; x < width; ++x) {
            const auto sum = static_cast<float>(sums_[x]);
            const float limit = std::min(sum * share, sum / count - 3);
            out[x] = static_cast<float>(row[x]) < limit ? 1 : 0;
        }
        const std::uint8_t* taken = rowAt(y - radius);
        for (std::size_t x = 0; x < width; ++x) {
            columns_[x] -= taken[x];
        }
    }
}

}  // namespace spile::scan::redraw
