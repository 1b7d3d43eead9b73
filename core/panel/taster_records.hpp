#pragma once

#include "core/panel/tasters.hpp"

#include <span>
#include <vector>

/// The scores of one attribute, beer by beer. Private to the sources of panelReportOf().
namespace spile::panel {

/// The scores that one taster gave the glasses of one beer.
struct Cell {
    int taster = 0;
    std::vector<double> lines;

    [[nodiscard]] double mean() const;
};

struct Beer {
    int session = 0;
    double months = 0;
    std::vector<Cell> cells;

    [[nodiscard]] bool isShared() const { return cells.size() > 1; }
};

/// Requires scores of one attribute, sorted by session, barrel and taster.
[[nodiscard]] std::vector<Beer> beersOf(std::span<const Score> scores);

/// How blind repeats differ.
struct RepeatSquares {
    double sum = 0;
    int freedom = 0;

    void add(const Cell& cell);
};

/// One taster's meeting with a beer that others tasted too.
struct Meeting {
    int session = 0;
    double months = 0;
    double score = 0;
    double given = 0;     // by the others, less their biases
    double expected = 0;  // what that foretells
    double unsure = 0;    // variance of the beer about that
    double others = 0;    // their number
};

/// Write one taster's gain, drift, spread about the expected and latest sitting into `taster`, as
/// far as there are meetings enough. Requires meetings in the order of time.
void measure(const std::vector<Meeting>& meetings, bool beersDiffer, TasterOnAttribute& taster);

}  // namespace spile::panel
