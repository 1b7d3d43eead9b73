#pragma once

/// Where things stand on paper: millimetres from the left and from the top.
namespace spile::labels {

struct Box {
    double left = 0;
    double top = 0;
    double width = 0;
    double height = 0;

    [[nodiscard]] double right() const { return left + width; }
    [[nodiscard]] double bottom() const { return top + height; }

    friend bool operator==(const Box&, const Box&) = default;
};

/// What lies within `box`, that far from each of its sides.
[[nodiscard]] inline Box within(const Box& box, double margin)
{
    return {box.left + margin, box.top + margin, box.width - 2 * margin, box.height - 2 * margin};
}

/// A thin straight line.
struct Stroke {
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
};

}  // namespace spile::labels
