#pragma once

#include "core/scan/symbol.hpp"
#include "demo/pictures/lettering.hpp"
#include "demo/pictures/noise.hpp"
#include "demo/pictures/rgb.hpp"

#include <string_view>
#include <vector>

namespace spile::demo {

/// A white matt plate: the symbol at both ends, the shown code and the brewer's mark between.
class LabelPlate {
public:
    LabelPlate(SeededRandom& random, const scan::ModuleGrid& symbol, std::string_view shownCode,
               std::string_view mark);

    /// Return how far a place lies inside the plate's rim; below 0 outside [mm].
    [[nodiscard]] double inside(double x, double y) const;
    /// Return the share of light given back at a place from the plate's centre [mm].
    [[nodiscard]] Rgb albedo(double x, double y, const Noise& noise) const;

private:
    struct Run {
        double x, end, width;
    };
    void drawSymbol(const scan::ModuleGrid& symbol, double left, double top);
    void drawLine(std::string_view text, double middle, double tallest);

    double width_;
    double height_;
    InkSheet print_;
    double grime_;
    std::vector<Run> runs_;  // dried drops that ran down over the plate
};

}  // namespace spile::demo
