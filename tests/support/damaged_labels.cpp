#include "tests/support/damaged_labels.hpp"

#include "core/base/simulated.hpp"
#include "core/scan/redraw_geometry.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <algorithm>

namespace spile::support {

using picture::Image;

void cover(Image& symbol, int column, int row, int columns, int rows, std::uint8_t level)
{
    const SymbolStyle style;
    const auto pixels = [&](int modules) { return modules * style.pixelsPerModule; };
    paste(symbol, plainPicture(pixels(columns), pixels(rows), level),
          pixels(column + style.quietZone), pixels(row + style.quietZone));
}

Image seenAt(const Image& symbol, const std::array<float, 8>& corners, int width, int height,
             std::uint8_t level)
{
    using scan::redraw::Perspective;
    scan::redraw::Corners spots;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        spots[i] = {corners[2 * i], corners[2 * i + 1]};
    }
    const auto side = static_cast<float>(symbol.width);
    const Perspective back = Perspective::ofSquare(side, spots).inverse();
    Image frame = plainPicture(width, height, level);
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            // Four samples of each pixel, so that edges are as soft as a camera's.
            int sum = 0;
            for (const float dy : {0.25F, 0.75F}) {
                for (const float dx : {0.25F, 0.75F}) {
                    const auto at = back.at(static_cast<float>(x) + dx, static_cast<float>(y) + dy);
                    const bool isInside = at.x >= 0 && at.y >= 0 && at.x < side && at.y < side;
                    sum +=
                        isInside
                            ? symbol.pixels[static_cast<std::size_t>(
                                  static_cast<int>(at.y) * symbol.width + static_cast<int>(at.x))]
                            : level;
                }
            }
            frame.pixels[static_cast<std::size_t>(y * width + x)] =
                static_cast<std::uint8_t>(sum / 4);
        }
    }
    return frame;
}

void blurAcross(Image& picture, int radius)
{
    std::vector<std::uint8_t> row(static_cast<std::size_t>(picture.width));
    for (int y = 0; y < picture.height; ++y) {
        std::uint8_t* pixels = picture.pixels.data() + std::ptrdiff_t{y} * picture.width;
        for (int x = 0; x < picture.width; ++x) {
            int sum = 0;
            for (int k = x - radius; k <= x + radius; ++k) {
                sum += pixels[std::clamp(k, 0, picture.width - 1)];
            }
            row[static_cast<std::size_t>(x)] = static_cast<std::uint8_t>(sum / (2 * radius + 1));
        }
        std::copy(row.begin(), row.end(), pixels);
    }
}

Image noiseOnly(int width, int height, std::uint64_t seed)
{
    Image noise = plainPicture(width, height);
    SeededRandom(seed).fill(noise.pixels);
    return noise;
}

}  // namespace spile::support
