#include "core/scan/frame_quality.hpp"

#include "core/scan/frame_passes.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::scan {

using picture::LuminanceView;

static void measureLight(const LuminanceView& middle, FrameQuality& quality)
{
    constexpr int tiles = 12;  // along each side
    const int width = middle.width / tiles;
    const int height = middle.height / tiles;
    if (width < 4 || height < 4) {
        quality.mean = 128;
        return;
    }
    double sum = 0;
    double count = 0;
    std::array<double, std::size_t{tiles} * tiles> noises{};
    for (int tile = 0; tile < tiles * tiles; ++tile) {
        double difference = 0;
        double differences = 0;
        for (int y = tile / tiles * height; y < (tile / tiles + 1) * height; y += 4) {
            const std::uint8_t* row = middle.data + std::ptrdiff_t{y} * middle.rowStride;
            const int begin = tile % tiles * width;
            for (int x = begin + 1; x + 1 < begin + width; x += 3) {
                const auto at = [&](int column) {
                    return int{row[std::ptrdiff_t{column} * middle.pixelStride]};
                };
                // Slopes cancel; what is left is noise, of 6 times its variance.
                const int bend = at(x - 1) - 2 * at(x) + at(x + 1);
                difference += bend * bend;
                sum += at(x);
                ++differences;
            }
        }
        count += differences;
        noises[static_cast<std::size_t>(tile)] = std::sqrt(difference / (6 * differences));
    }
    auto* const calm = noises.begin() + noises.size() / 5;
    std::nth_element(noises.begin(), calm, noises.end());
    quality.mean = sum / count;
    quality.noise = *calm;
}

// The levels along a line, each the mean of four side by side, which is less noisy.
struct Line {
    const std::uint8_t* first;
    std::ptrdiff_t along;
    std::ptrdiff_t beside;

    [[nodiscard]] int at(int i) const
    {
        const std::uint8_t* pixel = first + i * along;
        return (pixel[0] + pixel[beside] + pixel[2 * beside] + pixel[3 * beside]) / 4;
    }
};

// How wide edges are: their step over their steepest slope. Counted by width.
static constexpr int reach = 8;
using Widths = std::array<int, 2 * reach + 2>;

static void measureEdges(const Line& line, int length, Widths& widths)
{
    constexpr int leastStep = 30;
    for (int i = reach; i + reach + 1 < length; i += reach / 2) {
        const int step = std::abs(line.at(i + reach) - line.at(i - reach));
        if (step < leastStep) {
            continue;
        }
        int steepest = 1;
        for (int k = i - reach; k < i + reach; ++k) {
            steepest = std::max(steepest, std::abs(line.at(k + 1) - line.at(k)));
        }
        ++widths[static_cast<std::size_t>(std::min(step / steepest, 2 * reach + 1))];
    }
}

static double typical(const Widths& widths)
{
    constexpr int fewest = 30;
    int all = 0;
    for (const int count : widths) {
        all += count;
    }
    int below = 0;
    for (std::size_t width = 0; width < widths.size() && all >= fewest; ++width) {
        below += widths[width];
        if (2 * below >= all) {
            return static_cast<double>(width);
        }
    }
    return 0;
}

FrameQuality qualityOf(const LuminanceView& frame)
{
    const LuminanceView middle = middleOf(frame).view;
    FrameQuality quality;
    measureLight(middle, quality);
    constexpr int apart = 6;
    Widths acrossWidths{};
    for (int y = 0; y + 4 <= middle.height; y += apart) {
        const std::uint8_t* row = middle.data + std::ptrdiff_t{y} * middle.rowStride;
        measureEdges({row, middle.pixelStride, middle.rowStride}, middle.width, acrossWidths);
    }
    Widths downWidths{};
    for (int x = 0; x + 4 <= middle.width; x += apart) {
        const std::uint8_t* column = middle.data + std::ptrdiff_t{x} * middle.pixelStride;
        measureEdges({column, middle.rowStride, middle.pixelStride}, middle.height, downWidths);
    }
    // A shaken camera blurs one way only.
    quality.edgeWidth = std::max(typical(acrossWidths), typical(downWidths));
    return quality;
}

}  // namespace spile::scan
