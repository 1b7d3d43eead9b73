#pragma once

#include "core/picture/image.hpp"

#include <vector>

/// Grey planes that a reader keeps and fills anew for each frame: nothing is allocated once they
/// have reached their size.
namespace spile::scan::redraw {

struct Plane {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> pixels;

    void resize(int newWidth, int newHeight);
    [[nodiscard]] const std::uint8_t* row(int y) const
    {
        return pixels.data() + static_cast<std::ptrdiff_t>(y) * width;
    }
    [[nodiscard]] std::uint8_t* row(int y)
    {
        return pixels.data() + static_cast<std::ptrdiff_t>(y) * width;
    }
    [[nodiscard]] picture::LuminanceView view() const
    {
        return {pixels.data(), width, height, width, 1};
    }
};

/// Gather the pixels of `view`, whatever its strides.
void gather(const picture::LuminanceView& view, Plane& to);
/// Half the width and height; each pixel the mean of four.
void halve(const picture::LuminanceView& from, Plane& to);
/// Twice the width and height, in between linear.
void twice(const Plane& from, Plane& to);
/// Smooth with the weights 1 2 1 both ways.
void smooth(const Plane& from, Plane& to);
/// Take `amount` times the difference from the mean of 3 x 3 to each pixel.
void sharpen(const Plane& from, int amount, Plane& to);

/// Marks what is darker than its surroundings.
class DarkMap {
public:
    /// Mark with 1 each pixel of `from` that is darker than the mean of the square of side
    /// 2 * radius + 1 around it by `percent` of that mean and by 3 levels; others with 0.
    void mark(const Plane& from, int radius, int percent, Plane& to);

private:
    std::vector<int> columns_;  // sums over the rows of the square
    std::vector<int> sums_;     // of the squares of one row
};

}  // namespace spile::scan::redraw
