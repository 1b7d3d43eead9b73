#pragma once

#include <array>
#include <cmath>
#include <cstddef>

namespace spile::scan::redraw {

/// The index of what lies there in rows of that width.
[[nodiscard]] constexpr std::size_t indexAt(int row, int column, int width)
{
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(width) +
           static_cast<std::size_t>(column);
}

/// A place or a step in a picture, in pixels or in modules.
struct Spot {
    float x = 0;
    float y = 0;

    friend Spot operator+(Spot a, Spot b) { return {a.x + b.x, a.y + b.y}; }
    friend Spot operator-(Spot a, Spot b) { return {a.x - b.x, a.y - b.y}; }
    friend Spot operator*(float k, Spot a) { return {k * a.x, k * a.y}; }
};

[[nodiscard]] inline float dot(Spot a, Spot b) { return a.x * b.x + a.y * b.y; }
[[nodiscard]] inline float cross(Spot a, Spot b) { return a.x * b.y - a.y * b.x; }
[[nodiscard]] inline float length(Spot a) { return std::sqrt(dot(a, a)); }

/// Top left, top right, bottom right, bottom left as the symbol itself sees it.
using Corners = std::array<Spot, 4>;

/// What a pinhole camera does to a plane: maps the square (0, 0) to (side, side) onto `corners`.
struct Perspective {
    float xx = 1, xy = 0, x1 = 0;
    float yx = 0, yy = 1, y1 = 0;
    float wx = 0, wy = 0;

    [[nodiscard]] static Perspective ofSquare(float side, const Corners& corners)
    {
        const auto& [a, b, c, d] = corners;
        const Spot s = a - b + c - d;
        const Spot e = b - c;
        const Spot f = d - c;
        const float scale = cross(e, f);
        const float safe = std::abs(scale) < 1e-6F ? 1e-6F : scale;
        const float g = cross(s, f) / safe;
        const float h = cross(e, s) / safe;
        const float one = 1 / side;
        return {(b.x - a.x + g * b.x) * one,
                (d.x - a.x + h * d.x) * one,
                a.x,
                (b.y - a.y + g * b.y) * one,
                (d.y - a.y + h * d.y) * one,
                a.y,
                g * one,
                h * one};
    }
    /// The inverse, up to what rounding leaves.
    [[nodiscard]] Perspective inverse() const
    {
        // The adjugate of the matrix, scaled so that its last element is 1 again.
        const float last = xx * yy - xy * yx;
        const float k = 1 / (std::abs(last) < 1e-9F ? 1e-9F : last);
        return {k * (yy - y1 * wy),      k * (x1 * wy - xy),     k * (xy * y1 - x1 * yy),
                k * (y1 * wx - yx),      k * (xx - x1 * wx),     k * (x1 * yx - xx * y1),
                k * (yx * wy - yy * wx), k * (xy * wx - xx * wy)};
    }
    [[nodiscard]] Spot at(float x, float y) const
    {
        const float w = 1 / (wx * x + wy * y + 1);
        return {(xx * x + xy * y + x1) * w, (yx * x + yy * y + y1) * w};
    }
};

}  // namespace spile::scan::redraw
