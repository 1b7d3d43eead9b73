#pragma once

#include "core/base/result.hpp"
#include "core/labels/geometry.hpp"
#include "core/units/units.hpp"

#include <span>
#include <string>
#include <string_view>

/// What labels are printed on.
namespace spile::labels {

enum class StockKind : std::uint8_t {
    Sheet,  ///< ready-cut labels on a page
    Roll,   ///< one label a page
    Plain,  ///< uncut paper: head plates with cut marks, whose size follows the reading distance
};

/// One stock. All lengths in mm; the first label's corner is at (left, top). Plain paper has no
/// labels of its own: columns and rows are 0.
struct Stock {
    std::string_view name;  ///< "a4-8": to be named by
    std::string_view says;  ///< "A4, 8 of 99.1 x 67.7 mm"
    StockKind kind = StockKind::Sheet;
    double pageWidth = 0, pageHeight = 0;
    int columns = 0, rows = 0;
    double width = 0, height = 0;  ///< of one label
    double left = 0, top = 0;
    double pitchX = 0, pitchY = 0;  ///< from one label's corner to the next one's

    [[nodiscard]] int positions() const { return columns * rows; }
    /// The label at `position`, 0 being the first; row by row.
    [[nodiscard]] Box cell(int position) const
    {
        const int row = position / columns;
        return {left + pitchX * (position % columns), top + pitchY * row, width, height};
    }
};

/// Return all stocks: sheets of A4 and of US Letter, rolls, plain paper. Every label of theirs
/// takes at least one symbol that is read from the nearest distance.
[[nodiscard]] std::span<const Stock> stocks();

inline constexpr std::string_view usualPlate = "plate-a4";
inline constexpr std::string_view usualRoll = "roll-100x50";

/// Errors    NotFound.
[[nodiscard]] Result<Stock> findStock(std::string_view name);

}  // namespace spile::labels
