#pragma once

#include "core/scan/redraw_geometry.hpp"

#include <cstdint>
#include <vector>

namespace spile::scan::redraw {

/// What every QR symbol of one size has in common: finders, timing, alignment, dark module.
///
/// Source    ISO/IEC 18004:2015, 6.3 and table E.1.
struct KnownPatterns {
    /// Range     `modules` = 17 + 4 * version for versions 1 to 6: one alignment pattern at most.
    explicit KnownPatterns(int modules);

    /// A module whose colour is known; those of the quiet zone next to the symbol are too.
    struct Known {
        float x;  // of its centre, in modules
        float y;
        float sign;  // 1 dark, -1 light
    };

    /// 1 dark, -1 light, 0 not known.
    [[nodiscard]] int at(int row, int column) const { return signs[indexAt(row, column, size)]; }

    int size;
    std::vector<std::int8_t> signs;
    std::vector<Known> known;
};

}  // namespace spile::scan::redraw
