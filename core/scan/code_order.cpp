#include "core/scan/code_order.hpp"

#include <algorithm>
#include <cmath>

namespace spile::scan {

// Four times the centre, to stay in whole numbers.
static Point centreTimesFour(const Code& code)
{
    Point sum;
    for (const Point& corner : code.corners) {
        sum.x += corner.x;
        sum.y += corner.y;
    }
    return sum;
}

// Whether the centre of `b` lies in the upright box around `a`.
static bool isSamePlace(const Code& a, const Code& b)
{
    const Point centre = centreTimesFour(b);
    const auto [left, right] =
        std::minmax({a.corners[0].x, a.corners[1].x, a.corners[2].x, a.corners[3].x});
    const auto [top, bottom] =
        std::minmax({a.corners[0].y, a.corners[1].y, a.corners[2].y, a.corners[3].y});
    return centre.x >= 4 * left && centre.x <= 4 * right && centre.y >= 4 * top &&
           centre.y <= 4 * bottom;
}

std::vector<Code> withoutRepeats(std::vector<Code> codes)
{
    auto end = codes.begin();  // of those kept
    for (auto code = codes.begin(); code != codes.end(); ++code) {
        const bool repeats = std::any_of(codes.begin(), end, [&](const Code& kept) {
            return kept.text == code->text && kept.format == code->format &&
                   isSamePlace(kept, *code);
        });
        if (!repeats) {
            std::iter_swap(end++, code);
        }
    }
    codes.erase(end, codes.end());
    return codes;
}

void addNew(std::vector<Code> more, std::vector<Code>& codes)
{
    std::move(more.begin(), more.end(), std::back_inserter(codes));
    codes = withoutRepeats(std::move(codes));
}

void placeInWhole(std::vector<Code>& codes, Point topLeft, double scale)
{
    for (Code& code : codes) {
        for (Point& corner : code.corners) {
            corner = {static_cast<int>(std::lround(corner.x * scale)) + topLeft.x,
                      static_cast<int>(std::lround(corner.y * scale)) + topLeft.y};
        }
    }
}

void orderFromMiddle(std::vector<Code>& codes, int width, int height)
{
    const auto distance = [&](const Code& code) {
        const Point centre = centreTimesFour(code);
        const std::int64_t x = std::int64_t{centre.x} - 2 * std::int64_t{width};
        const std::int64_t y = std::int64_t{centre.y} - 2 * std::int64_t{height};
        return x * x + y * y;
    };
    std::stable_sort(codes.begin(), codes.end(),
                     [&](const Code& a, const Code& b) { return distance(a) < distance(b); });
}

}  // namespace spile::scan
