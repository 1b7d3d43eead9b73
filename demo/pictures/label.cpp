#include "demo/pictures/label.hpp"

#include "demo/pictures/vec3.hpp"

#include <algorithm>
#include <cmath>

namespace spile::demo {

static constexpr double module = 3.0;  // [mm]
static constexpr int quietModules = 4;
static constexpr double margin = 8.0;       // at both ends, for the screws [mm]
static constexpr double textSpace = 112.0;  // [mm]
static constexpr double dotsPerMm = 4.0;
static constexpr double cornerRadius = 4.0;
static constexpr double screwRadius = 2.6;

static constexpr Rgb paper{0.80, 0.79, 0.755};
static constexpr Rgb ink{0.030, 0.029, 0.031};
static constexpr Rgb dirt{0.36, 0.27, 0.17};
static constexpr Rgb screw{0.30, 0.29, 0.27};

static double symbolSpace(const scan::ModuleGrid& symbol)
{
    return module * (symbol.size + 2 * quietModules);
}

LabelPlate::LabelPlate(SeededRandom& random, const scan::ModuleGrid& symbol,
                       std::string_view shownCode, std::string_view mark)
    : width_(2.0 * (margin + symbolSpace(symbol)) + textSpace),
      height_(symbolSpace(symbol) + 2.0),
      print_(static_cast<int>(width_ * dotsPerMm), static_cast<int>(height_ * dotsPerMm)),
      grime_(between(random, 0.25, 1.0))
{
    const double quiet = quietModules * module;
    drawSymbol(symbol, margin + quiet, 1.0 + quiet);
    drawSymbol(symbol, width_ - margin - symbolSpace(symbol) + quiet, 1.0 + quiet);
    drawLine(shownCode, 0.35 * height_, 18.0);
    drawLine(mark, 0.70 * height_, 13.0);
    const double half = 0.36 * textSpace * dotsPerMm;
    drawStroke(print_, 0.5 * print_.width - half, 0.535 * print_.height, 0.5 * print_.width + half,
               0.535 * print_.height, 0.6 * dotsPerMm);

    const int count = static_cast<int>(between(random, 0.0, 4.0));
    for (int i = 0; i < count; ++i) {
        runs_.push_back({between(random, -0.5, 0.5) * width_, between(random, -0.45, 0.5) * height_,
                         between(random, 1.2, 3.0)});
    }
}

void LabelPlate::drawSymbol(const scan::ModuleGrid& symbol, double left, double top)
{
    const int pitch = static_cast<int>(module * dotsPerMm);
    const int firstColumn = static_cast<int>(left * dotsPerMm);
    const int firstRow = static_cast<int>(top * dotsPerMm);
    for (int row = 0; row < symbol.size * pitch; ++row) {
        for (int column = 0; column < symbol.size * pitch; ++column) {
            if (symbol.dark(row / pitch, column / pitch)) {
                print_.at(firstColumn + column, firstRow + row) = 1.0F;
            }
        }
    }
}

void LabelPlate::drawLine(std::string_view text, double middle, double tallest)
{
    const double widest = textSpace - 3.0;
    const double height = std::min(tallest, widest / std::max(textWidth(text, 1.0), 1.0));
    const double left = 0.5 * (width_ - textWidth(text, height));
    drawText(print_, text, left * dotsPerMm, (middle - 0.5 * height) * dotsPerMm,
             height * dotsPerMm);
}

double LabelPlate::inside(double x, double y) const
{
    const double dx = std::abs(x) - (0.5 * width_ - cornerRadius);
    const double dy = std::abs(y) - (0.5 * height_ - cornerRadius);
    const double corner = flatLength(std::max(dx, 0.0), std::max(dy, 0.0));
    return cornerRadius - corner - std::min(std::max(dx, dy), 0.0);
}

Rgb LabelPlate::albedo(double x, double y, const Noise& noise) const
{
    const double fromScrew =
        flatLength(std::abs(x) - 0.5 * width_ + 0.55 * margin, y) / screwRadius;
    if (fromScrew < 1.0) {
        const double slot =
            std::abs(0.8 * y - 0.6 * x + 0.6 * std::copysign(0.5 * width_ - 0.55 * margin, x));
        return (slot < 0.5 ? 0.25 : 1.0 - 0.5 * fromScrew * fromScrew) * screw;
    }
    const double printed =
        print_.sample((x + 0.5 * width_) * dotsPerMm - 0.5, (y + 0.5 * height_) * dotsPerMm - 0.5);
    const double thin =
        printed > 0.0 ? 0.10 * ramp(0.55, 0.85, noise.fractal(x / 3.0, y / 3.0, 2)) : 0.0;
    const Rgb clean = mix(paper, ink, printed * (1.0 - thin));
    const double rim = std::exp(-inside(x, y) / 3.0);
    double soiled = 0.34 * ramp(0.50, 0.80, noise.fractal(x / 75.0 + 3.0, y / 50.0, 4)) + 0.3 * rim;
    for (const Run& run : runs_) {
        const double sway = 2.5 * (noise.at(run.x, y / 25.0) - 0.5);
        const double off = std::abs(x - run.x - sway) / run.width;
        if (off < 1.5 && y < run.end) {
            // Dried at the edges first, so the edges are the darker part.
            soiled += 0.24 * (1.0 - ramp(0.8, 1.25, off)) * (0.5 + 0.5 * ramp(0.5, 0.95, off)) *
                      ramp(0.0, 12.0, run.end - y);
        }
    }
    const double stain = grime_ * soiled + 0.25 * std::exp(-(fromScrew - 1.0));
    const double cut = 1.0 - 0.35 * (1.0 - ramp(0.2, 0.9, inside(x, y)));  // the plate's edge
    return cut * mix(clean, clean * (1.5 * dirt), std::min(stain, 0.8));
}

}  // namespace spile::demo
