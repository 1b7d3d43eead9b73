#include "core/labels/stock.hpp"

#include <algorithm>
#include <array>

namespace spile::labels {

namespace {

constexpr double inch = 25.4;

struct Paper {
    double width, height;
};
constexpr Paper a4{210, 297};
constexpr Paper letter{8.5 * inch, 11 * inch};

// Labels in the middle of the page, `gap` apart from left to right and touching from row to row,
// as such sheets are cut.
constexpr Stock sheet(std::string_view name, std::string_view says, Paper paper, int columns,
                      int rows, double width, double height, double gap = 0)
{
    const double across = columns * width + (columns - 1) * gap;
    return {name,
            says,
            StockKind::Sheet,
            paper.width,
            paper.height,
            columns,
            rows,
            width,
            height,
            (paper.width - across) / 2,
            (paper.height - rows * height) / 2,
            width + gap,
            height};
}

constexpr Stock roll(std::string_view name, std::string_view says, double width, double height)
{
    return {name, says, StockKind::Roll, width, height, 1, 1, width, height, 0, 0, width, height};
}

constexpr Stock plain(std::string_view name, std::string_view says, Paper paper)
{
    return {name, says, StockKind::Plain, paper.width, paper.height};
}

// Sizes and counts from memory, common practice, no source.
constexpr std::array table{
    sheet("a4-2", "A4, 2 of 199.6 x 143.5 mm", a4, 1, 2, 199.6, 143.5),
    sheet("a4-4", "A4, 4 of 99.1 x 139 mm", a4, 2, 2, 99.1, 139, 2.5),
    sheet("a4-6", "A4, 6 of 99.1 x 93.1 mm", a4, 2, 3, 99.1, 93.1, 2.5),
    sheet("a4-8", "A4, 8 of 99.1 x 67.7 mm", a4, 2, 4, 99.1, 67.7, 2.5),
    sheet("a4-10", "A4, 10 of 99.1 x 57 mm", a4, 2, 5, 99.1, 57, 2.5),
    sheet("a4-12", "A4, 12 of 63.5 x 72 mm", a4, 3, 4, 63.5, 72, 2.5),
    sheet("a4-14", "A4, 14 of 99.1 x 38.1 mm", a4, 2, 7, 99.1, 38.1, 2.5),
    sheet("a4-18", "A4, 18 of 63.5 x 46.6 mm", a4, 3, 6, 63.5, 46.6, 2.5),
    sheet("a4-21", "A4, 21 of 63.5 x 38.1 mm", a4, 3, 7, 63.5, 38.1, 2.5),
    sheet("a4-24", "A4, 24 of 70 x 37 mm", a4, 3, 8, 70, 37),
    sheet("letter-2", "US Letter, 2 of 8.5 x 5.5 in", letter, 1, 2, 8.5 * inch, 5.5 * inch),
    sheet("letter-6", "US Letter, 6 of 4 x 3.33 in", letter, 2, 3, 4 * inch, 10.0 / 3 * inch,
          3.0 / 16 * inch),
    sheet("letter-10", "US Letter, 10 of 4 x 2 in", letter, 2, 5, 4 * inch, 2 * inch,
          3.0 / 16 * inch),
    sheet("letter-14", "US Letter, 14 of 4 x 1.33 in", letter, 2, 7, 4 * inch, 4.0 / 3 * inch,
          3.0 / 16 * inch),
    roll("roll-57x32", "Roll, 57 x 32 mm", 57, 32),
    roll("roll-76x51", "Roll, 76 x 51 mm (3 x 2 in)", 3 * inch, 2 * inch),
    roll("roll-100x50", "Roll, 100 x 50 mm", 100, 50),
    roll("roll-100x70", "Roll, 100 x 70 mm", 100, 70),
    roll("roll-102x152", "Roll, 102 x 152 mm (4 x 6 in)", 4 * inch, 6 * inch),
    plain("plate-a4", "Head plates to cut out of A4", a4),
    plain("plate-letter", "Head plates to cut out of US Letter", letter)};

}  // namespace

std::span<const Stock> stocks() { return table; }

Result<Stock> findStock(std::string_view name)
{
    const auto* const found =
        std::find_if(table.begin(), table.end(), [&](const Stock& s) { return s.name == name; });
    if (found == table.end()) {
        return fail(ErrorCode::NotFound, "label stock", std::string(name),
                    "labels --list-stock lists them");
    }
    return *found;
}

}  // namespace spile::labels
