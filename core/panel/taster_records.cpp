#include "core/panel/taster_records.hpp"

#include <numeric>

namespace spile::panel {

double Cell::mean() const
{
    return std::accumulate(lines.begin(), lines.end(), 0.0) / static_cast<double>(lines.size());
}

std::vector<Beer> beersOf(std::span<const Score> scores)
{
    std::vector<Beer> beers;
    const Score* last = nullptr;
    for (const Score& score : scores) {
        if (last == nullptr || last->session != score.session || last->barrel != score.barrel) {
            beers.push_back({score.session, score.months, {}});
        }
        std::vector<Cell>& cells = beers.back().cells;
        if (cells.empty() || cells.back().taster != score.taster) {
            cells.push_back({score.taster, {}});
        }
        cells.back().lines.push_back(score.line);
        last = &score;
    }
    return beers;
}

void RepeatSquares::add(const Cell& cell)
{
    const double mean = cell.mean();
    for (const double line : cell.lines) {
        sum += (line - mean) * (line - mean);
    }
    freedom += static_cast<int>(cell.lines.size()) - 1;
}

}  // namespace spile::panel
