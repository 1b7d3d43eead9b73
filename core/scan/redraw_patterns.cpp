#include "core/scan/redraw_patterns.hpp"

#include <algorithm>
#include <cmath>

namespace spile::scan::redraw {

// The rings of a square pattern around its middle; those in `light` are light.
static void drawRings(KnownPatterns& patterns, int row, int column, int reach, int light,
                      int alsoLight)
{
    for (int y = -reach; y <= reach; ++y) {
        for (int x = -reach; x <= reach; ++x) {
            const int r = row + y;
            const int c = column + x;
            if (r < 0 || c < 0 || r >= patterns.size || c >= patterns.size) {
                continue;
            }
            const int ring = std::max(std::abs(y), std::abs(x));
            patterns.signs[indexAt(r, c, patterns.size)] =
                ring == light || ring == alsoLight ? -1 : 1;
        }
    }
}

KnownPatterns::KnownPatterns(int modules) : size(modules), signs(indexAt(modules, 0, modules), 0)
{
    for (int i = 8; i < size - 8; ++i) {
        const auto sign = static_cast<std::int8_t>(i % 2 == 0 ? 1 : -1);
        signs[indexAt(6, i, size)] = sign;
        signs[indexAt(i, 6, size)] = sign;
    }
    drawRings(*this, 3, 3, 4, 2, 4);
    drawRings(*this, 3, size - 4, 4, 2, 4);
    drawRings(*this, size - 4, 3, 4, 2, 4);
    if (size > 21) {
        drawRings(*this, size - 7, size - 7, 2, 1, 1);
    }
    signs[indexAt(size - 8, 8, size)] = 1;

    for (int row = -1; row <= size; ++row) {
        for (int column = -1; column <= size; ++column) {
            const bool isQuiet = row < 0 || column < 0 || row == size || column == size;
            const int sign = isQuiet ? -1 : at(row, column);
            if (sign != 0) {
                known.push_back({static_cast<float>(column) + 0.5F, static_cast<float>(row) + 0.5F,
                                 static_cast<float>(sign)});
            }
        }
    }
}

}  // namespace spile::scan::redraw
