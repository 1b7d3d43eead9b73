#include "core/labels/label_path.hpp"

#include "core/labels/decimal.hpp"

namespace spile::labels {

namespace {

void add(std::string& path, const PlacedSymbol& symbol, const Box& cell)
{
    const Box modules = symbol.modules();
    for (const DarkRun& run : darkRuns(symbol.grid)) {
        const double left = modules.left - cell.left + run.column * symbol.module;
        const double top = modules.top - cell.top + run.row * symbol.module;
        path += "M " + number(left) + " " + number(top) + " H " +
                number(left + run.width * symbol.module) + " V " +
                number(top + run.height * symbol.module) + " H " + number(left) + " Z ";
    }
}

void add(std::string& path, const TextLine& line, const Box& cell)
{
    for (const Glyph& glyph : line.shaped.glyphs) {
        const double x = line.left - cell.left + glyph.x * line.size;
        const double y = line.baseline - cell.top - glyph.y * line.size;
        for (const OutlineStep& step : outlineOf(line.face, glyph.id)) {
            path += step.letter;
            path += ' ';
            for (std::size_t i = 0; i + 1 < step.places.size(); i += 2) {
                path += number(x + step.places[i] * line.size) + " " +
                        number(y - step.places[i + 1] * line.size) + " ";
            }
        }
    }
}

}  // namespace

std::string pathOf(const PlacedLabel& label)
{
    std::string path;
    for (const PlacedSymbol& symbol : label.symbols) {
        add(path, symbol, label.cell);
    }
    for (const TextLine& line : label.lines) {
        add(path, line, label.cell);
    }
    return path;
}

std::string pathOf(const scan::ModuleGrid& grid)
{
    const auto side = static_cast<double>(pathSide(grid));
    const PlacedSymbol symbol{{0, 0, side, side}, 1, grid};
    std::string path;
    add(path, symbol, symbol.quiet);
    return path;
}

}  // namespace spile::labels
