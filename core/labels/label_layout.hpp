#pragma once

#include "core/labels/text_block.hpp"
#include "core/scan/barrel_code.hpp"
#include "core/scan/symbol.hpp"
#include "core/units/units.hpp"

#include <optional>
#include <string>
#include <vector>

/// One label: its QR symbols, its code and its mark.
namespace spile::labels {

inline constexpr Length nearestReading = metres(0.4);
inline constexpr Length farthestReading = metres(1.5);
inline constexpr int quietModules = 4;     ///< on each side of a symbol; one is enough to read it
inline constexpr int symbolModules = 25;   ///< version 2
inline constexpr double plateMiddle = 60;  ///< mm between the two symbols of a head plate

/// Return the module of a symbol that a phone reads from `distance`, in mm, rounded up to a tenth.
///
/// Range     nearestReading to farthestReading.
/// Errors    NotFinite; OutOfRange.
/// Source    the reader needs 2.0 pixels a module (measured, 30 of 30 pictures; 60 of 75 at 1.75),
///           a frame of 1920 pixels over 65 degrees has 1507 px of focal length, and half as much
///           again is margin: 1.2 mm at 0.6 m, 1.6 mm at 0.8 m, 2.0 mm at 1 m.
[[nodiscard]] Result<double> moduleFor(Length distance);

/// The side of a symbol with its quiet zone, in mm.
[[nodiscard]] constexpr double sideOf(double module)
{
    return (symbolModules + 2 * quietModules) * module;
}

/// What a label is to say.
struct LabelWords {
    std::string code;  ///< "7K2QFM"
    std::string mark;  ///< the brewer's own, "Rum 3"; may be empty

    friend bool operator==(const LabelWords&, const LabelWords&) = default;
};

struct PlacedSymbol {
    Box quiet;  ///< the symbol with its quiet zone
    double module = 0;
    scan::ModuleGrid grid;

    [[nodiscard]] Box modules() const { return within(quiet, quietModules * module); }
};

/// Runs of dark modules as rectangles, in modules from the symbol's top left; each as wide as it
/// goes, and as high as it stays as wide. They do not overlap.
struct DarkRun {
    int column = 0, row = 0, width = 0, height = 0;
};
[[nodiscard]] std::vector<DarkRun> darkRuns(const scan::ModuleGrid& grid);

struct PlacedLabel {
    LabelWords words;
    Box cell;
    std::vector<PlacedSymbol> symbols;  ///< two, or one where two do not fit
    std::vector<TextLine> lines;
};

/// Where things stand in a label whose corner is at 0, 0.
struct Arrangement {
    std::vector<Box> symbols;  ///< with their quiet zones
    Box words;
};

/// Arrange a label of `width` by `height`, in mm: two symbols if they fit beside each other, else
/// one; the words where the code is largest. None if not even one symbol fits with a legible code.
[[nodiscard]] std::optional<Arrangement> arrange(double width, double height, double module);

/// Lay out one label in `cell` as `arrangement` says.
///
/// Errors    Malformed if `words.code` is no code of the cellar `mark`.
[[nodiscard]] Result<PlacedLabel> layOutLabel(const LabelWords& words, const std::string& mark,
                                              const Box& cell, double module,
                                              const Arrangement& arrangement);

}  // namespace spile::labels
