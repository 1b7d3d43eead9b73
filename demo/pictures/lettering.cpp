#include "demo/pictures/lettering.hpp"

#include "demo/pictures/vec3.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace spile::demo {

// Letters are 6 wide and 8 high; a new one starts every 8. Each is a list of strokes divided by
// '|'; a stroke is a list of points "xy", and a leading '~' rounds it.
static constexpr double glyphHeight = 8.0;
static constexpr double glyphAdvance = 8.0;
static constexpr double glyphWidth = 6.0;
static constexpr double strokeThickness = 1.5;

static constexpr std::string_view glyphNames = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-./";
static constexpr std::array<std::string_view, glyphNames.size()> glyphs = {
    "08 30 68|15 55",                   // A
    "00 08|~00 60 64 04|~04 64 68 08",  // B
    "~62 60 00 08 68 66",               // C
    "00 08|~00 60 68 08",               // D
    "60 00 08 68|04 54",                // E
    "60 00 08|04 54",                   // F
    "~62 60 00 08 68 64|64 44",         // G
    "00 08|60 68|04 64",                // H
    "30 38|10 50|18 58",                // I
    "~50 58 08 05",                     // J
    "00 08|60 05|23 68",                // K
    "00 08 68",                         // L
    "08 00 35 60 68",                   // M
    "08 00 68 60",                      // N
    "~00 60 68 08 00",                  // O
    "00 08|~00 60 65 05",               // P
    "~00 60 68 08 00|46 68",            // Q
    "00 08|~00 60 64 04|34 68",         // R
    "~62 60 00 04 64 68 08 06",         // S
    "00 60|30 38",                      // T
    "~00 08 68 60",                     // U
    "00 38 60",                         // V
    "00 18 33 58 60",                   // W
    "00 68|60 08",                      // X
    "00 34 60|34 38",                   // Y
    "00 60 08 68",                      // Z
    "~10 50 58 18 10",                  // 0
    "12 30 38|18 58",                   // 1
    "~02 00 60 64 08|08 68",            // 2
    "~01 00 60 64 24|~24 64 68 08 07",  // 3
    "48 40 05 65",                      // 4
    "50 00 03|~03 63 68 08 07",         // 5
    "~50 00 06|~04 64 68 08 04",        // 6
    "00 60 28",                         // 7
    "~10 50 54 14 10|~04 64 68 08 04",  // 8
    "~00 60 64 04 00|~62 68 18",        // 9
    "14 54",                            // -
    "38 38",                            // .
    "08 60",                            // /
};

namespace {

struct Point {
    double x;
    double y;
    friend bool operator==(const Point&, const Point&) = default;
};
using Stroke = std::vector<Point>;

}  // namespace

static Point along(Point a, Point b, double share)
{
    return {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
}

/// Cut every corner, as Chaikin did; a closed stroke stays closed and smooth all round.
static Stroke cornersCut(const Stroke& stroke)
{
    const bool closed = stroke.front() == stroke.back();
    Stroke result;
    if (!closed) {
        result.push_back(stroke.front());
    }
    for (std::size_t i = 1; i < stroke.size(); ++i) {
        result.push_back(along(stroke[i - 1], stroke[i], 0.25));
        result.push_back(along(stroke[i - 1], stroke[i], 0.75));
    }
    result.push_back(closed ? result.front() : stroke.back());
    return result;
}

static Stroke strokeFrom(std::string_view text)
{
    const bool rounded = text.starts_with('~');
    text.remove_prefix(rounded ? 1 : 0);
    Stroke stroke;
    for (std::size_t i = 0; i + 1 < text.size(); i += 3) {
        stroke.push_back(
            {static_cast<double>(text[i] - '0'), static_cast<double>(text[i + 1] - '0')});
    }
    if (rounded) {
        for (int i = 0; i < 3; ++i) {
            stroke = cornersCut(stroke);
        }
    }
    return stroke;
}

static std::vector<Stroke> strokesOf(char letter)
{
    const char large =
        letter >= 'a' && letter <= 'z' ? static_cast<char>(letter - 'a' + 'A') : letter;
    const std::size_t index = glyphNames.find(large);
    std::vector<Stroke> strokes;
    if (index == std::string_view::npos) {
        return strokes;
    }
    std::string_view rest = glyphs.at(index);
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find('|'), rest.size());
        strokes.push_back(strokeFrom(rest.substr(0, end)));
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return strokes;
}

InkSheet::InkSheet(int w, int h)
    : width(w), height(h), ink(static_cast<std::size_t>(w) * static_cast<std::size_t>(h))
{
}

float& InkSheet::at(int column, int row)
{
    return ink[static_cast<std::size_t>(row) * static_cast<std::size_t>(width) +
               static_cast<std::size_t>(column)];
}

float InkSheet::at(int column, int row) const
{
    return ink[static_cast<std::size_t>(row) * static_cast<std::size_t>(width) +
               static_cast<std::size_t>(column)];
}

double InkSheet::sample(double x, double y) const
{
    const int column = static_cast<int>(std::floor(x));
    const int row = static_cast<int>(std::floor(y));
    if (column < 0 || row < 0 || column + 1 >= width || row + 1 >= height) {
        return 0.0;
    }
    const auto value = [&](int c, int r) { return static_cast<double>(at(c, r)); };
    const double u = x - column;
    const double v = y - row;
    const double upper = (1.0 - u) * value(column, row) + u * value(column + 1, row);
    const double lower = (1.0 - u) * value(column, row + 1) + u * value(column + 1, row + 1);
    return (1.0 - v) * upper + v * lower;
}

void drawStroke(InkSheet& sheet, double x0, double y0, double x1, double y1, double thickness)
{
    const double reach = 0.5 * thickness + 1.0;
    const int left = std::max(0, static_cast<int>(std::floor(std::min(x0, x1) - reach)));
    const int right =
        std::min(sheet.width - 1, static_cast<int>(std::ceil(std::max(x0, x1) + reach)));
    const int top = std::max(0, static_cast<int>(std::floor(std::min(y0, y1) - reach)));
    const int bottom =
        std::min(sheet.height - 1, static_cast<int>(std::ceil(std::max(y0, y1) + reach)));
    const double dx = x1 - x0;
    const double dy = y1 - y0;
    const double squared = std::max(dx * dx + dy * dy, 1e-12);  // a dot is a stroke too
    for (int row = top; row <= bottom; ++row) {
        for (int column = left; column <= right; ++column) {
            const double t = std::clamp(((column - x0) * dx + (row - y0) * dy) / squared, 0.0, 1.0);
            const double distance = flatLength(column - x0 - t * dx, row - y0 - t * dy);
            const double cover = std::clamp(0.5 * thickness - distance + 0.5, 0.0, 1.0);
            sheet.at(column, row) = std::max(sheet.at(column, row), static_cast<float>(cover));
        }
    }
}

double textWidth(std::string_view text, double height)
{
    if (text.empty()) {
        return 0.0;
    }
    const double gaps = static_cast<double>(text.size() - 1) * glyphAdvance;
    return (gaps + glyphWidth) * height / glyphHeight;
}

void drawText(InkSheet& sheet, std::string_view text, double x, double y, double height)
{
    const double scale = height / glyphHeight;
    for (const char letter : text) {
        for (const Stroke& stroke : strokesOf(letter)) {
            for (std::size_t i = 1; i < stroke.size(); ++i) {
                drawStroke(sheet, x + scale * stroke[i - 1].x, y + scale * stroke[i - 1].y,
                           x + scale * stroke[i].x, y + scale * stroke[i].y,
                           scale * strokeThickness);
            }
        }
        x += scale * glyphAdvance;
    }
}

}  // namespace spile::demo
