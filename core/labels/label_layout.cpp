#include "core/labels/label_layout.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::labels {

namespace {

constexpr double pixelsPerModule = 2.0;
constexpr double focalLength = 1507;  // pixels
constexpr double margin = 1.5;

const std::string anyCode = "WWW-WWW";     // wider than any code
const std::string anyMark = "Bourbon 12";  // as long as marks often are

Box moved(const Box& box, const Box& by)
{
    return {box.left + by.left, box.top + by.top, box.width, box.height};
}

// A gap between words and symbols, and between words and the label's edge.
constexpr double wordGap = 2;

struct Candidate {
    Arrangement arrangement;
    double wordSize = 0;  // of code and mark together
};

// With two symbols: the words between them or below them; with one: to its right or below it.
std::array<Arrangement, 2> waysWithTwo(const Box& inner, double side)
{
    const Box left{inner.left, inner.top + (inner.height - side) / 2, side, side};
    const Box right{inner.right() - side, left.top, side, side};
    const Box between{left.right() + wordGap, inner.top, inner.width - 2 * side - 2 * wordGap,
                      inner.height};
    const double below = inner.height - side;
    const double quarter = (inner.width - 2 * side) / 4;
    const Box lowerLeft{inner.left + quarter, inner.top, side, side};
    const Box lowerRight{inner.right() - quarter - side, inner.top, side, side};
    const Box under{inner.left + wordGap, inner.top + side, inner.width - 2 * wordGap, below};
    return {Arrangement{{left, right}, between}, Arrangement{{lowerLeft, lowerRight}, under}};
}

std::array<Arrangement, 2> waysWithOne(const Box& inner, double side)
{
    const Box left{inner.left, inner.top + (inner.height - side) / 2, side, side};
    const Box beside{left.right() + wordGap, inner.top, inner.width - side - 2 * wordGap,
                     inner.height};
    const Box middle{inner.left + (inner.width - side) / 2, inner.top, side, side};
    const Box under{inner.left + wordGap, inner.top + side, inner.width - 2 * wordGap,
                    inner.height - side};
    return {Arrangement{{left}, beside}, Arrangement{{middle}, under}};
}

void keepLarger(const std::array<Arrangement, 2>& ways, std::optional<Candidate>& best)
{
    for (const Arrangement& way : ways) {
        const auto lines = fitText(anyCode, anyMark, way.words);
        if (!lines) {
            continue;
        }
        const double size = lines->front().size + lines->back().size;
        if (!best || size > best->wordSize) {
            best = Candidate{way, size};
        }
    }
}

}  // namespace

Result<double> moduleFor(Length distance)
{
    if (!std::isfinite(distance.si())) {
        return fail(ErrorCode::NotFinite, "reading distance");
    }
    constexpr double slack = 1e-9;
    if (distance.si() < nearestReading.si() - slack ||
        distance.si() > farthestReading.si() + slack) {
        return fail(ErrorCode::OutOfRange, "reading distance", {}, "0.4 to 1.5 m");
    }
    const double needed = pixelsPerModule * margin * inMillimetres(distance) / focalLength;
    return std::ceil(needed * 10 - slack) / 10;
}

std::optional<Arrangement> arrange(double width, double height, double module)
{
    const double side = sideOf(module);
    constexpr std::array insets{2.0, 1.0, 0.0};  // printers do not hit the label to a hair
    for (const int symbols : {2, 1}) {
        for (const double inset : insets) {
            const Box inner = within({0, 0, width, height}, inset);
            constexpr double slack = 1e-9;
            if (symbols * side > inner.width + slack || side > inner.height + slack) {
                continue;
            }
            std::optional<Candidate> best;
            keepLarger(symbols == 2 ? waysWithTwo(inner, side) : waysWithOne(inner, side), best);
            if (best) {
                return best->arrangement;
            }
        }
    }
    return std::nullopt;
}

std::vector<DarkRun> darkRuns(const scan::ModuleGrid& grid)
{
    std::vector<DarkRun> runs;
    std::vector<std::size_t> above;  // the runs that end at the row before
    for (int row = 0; row < grid.size; ++row) {
        std::vector<std::size_t> here;
        for (int column = 0; column < grid.size; ++column) {
            const int start = column;
            while (column < grid.size && grid.dark(row, column)) {
                ++column;
            }
            if (column == start) {
                continue;
            }
            const auto same = std::find_if(above.begin(), above.end(), [&](std::size_t i) {
                return runs[i].column == start && runs[i].width == column - start;
            });
            if (same != above.end()) {
                ++runs[*same].height;
                here.push_back(*same);
            } else {
                here.push_back(runs.size());
                runs.push_back({start, row, column - start, 1});
            }
        }
        above = std::move(here);
    }
    return runs;
}

Result<PlacedLabel> layOutLabel(const LabelWords& words, const std::string& mark, const Box& cell,
                                double module, const Arrangement& arrangement)
{
    if (!scan::isCode(mark, words.code)) {
        return fail(ErrorCode::Malformed, "barrel code", words.code,
                    "6 letters or digits of the cellar " + mark);
    }
    SPILE_ASSIGN(grid, scan::makeQr(scan::labelText({mark, words.code})));
    PlacedLabel label{words, cell, {}, {}};
    for (const Box& symbol : arrangement.symbols) {
        label.symbols.push_back({moved(symbol, cell), module, grid});
    }
    auto lines = fitText(scan::shown(words.code), words.mark, moved(arrangement.words, cell));
    if (lines) {
        label.lines = std::move(*lines);
    }
    return label;
}

}  // namespace spile::labels
