#pragma once

#include "core/labels/label_layout.hpp"
#include "core/labels/stock.hpp"

#include <cstddef>
#include <vector>

/// Pages of labels, as they are printed.
namespace spile::labels {

/// What to print.
struct Order {
    std::string cellarMark;          ///< "7K2Q"
    std::vector<LabelWords> labels;  ///< in this order
    Stock stock;
    Length distance = metres(0.6);  ///< that phones read them from
    int from = 1;                   ///< the first free label of a sheet that was begun, from 1
    bool testPage = false;          ///< a first page for plain paper: outlines and a line of 50 mm
};

inline constexpr std::size_t mostLabels = 5000;
inline constexpr double ruleLength =
    50;  ///< mm, of the line that shows whether a print has its size

struct Page {
    std::vector<PlacedLabel> labels;
    std::vector<Stroke> strokes;  ///< where to cut, outlines of a test page, the line of 50 mm
    std::vector<TextLine> lines;  ///< beside them
};

struct Sheets {
    double pageWidth = 0, pageHeight = 0;  ///< mm
    double module = 0;                     ///< mm
    std::vector<Page> pages;
    /// The marks that have characters which the font lacks: a box stands in their place.
    std::vector<std::string> incomplete;
};

/// How the labels of a stock look at that distance: for plain paper, with the labels that fit on
/// it.
struct Fitted {
    Stock stock;  ///< columns and rows at least 1
    double module = 0;
    Arrangement arrangement;
};

/// Errors    NotFinite, OutOfRange for the distance; OutOfRange "label stock" if not even one
/// symbol
///           fits: `limit` names the size it needs, and from how far this stock can be read.
[[nodiscard]] Result<Fitted> fit(const Stock& stock, Length distance);

/// The farthest distance that `stock` serves, in steps of 5 cm; none if it serves no distance.
[[nodiscard]] std::optional<Length> farthestOf(const Stock& stock);

/// Lay out an order.
///
/// Shape     row by row, the first label at position `from`; as many pages as it takes.
/// Range     1 to mostLabels labels; `from` 1 to the labels of a page, 1 for rolls and plain paper.
/// Errors    those of fit() and layOutLabel(); OutOfRange for the count ("labels") and "position".
[[nodiscard]] Result<Sheets> layOut(const Order& order);

}  // namespace spile::labels
