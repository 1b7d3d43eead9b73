#include "core/base/simulated.hpp"
#include "core/labels/sheets.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::labels {

namespace {

const std::string cellar = "4TN8";
constexpr double hair = 1e-6;

bool isWithin(const Box& inner, const Box& outer)
{
    return inner.left >= outer.left - hair && inner.top >= outer.top - hair &&
           inner.right() <= outer.right() + hair && inner.bottom() <= outer.bottom() + hair;
}

bool overlap(const Box& a, const Box& b)
{
    return a.left < b.right() - hair && b.left < a.right() - hair && a.top < b.bottom() - hair &&
           b.top < a.bottom() - hair;
}

// A mark of a brewer: words of letters of several scripts, also none and very long ones.
rc::Gen<std::string> marks()
{
    const auto letter =
        rc::gen::element<std::string>("R", "u", "m", "3", "W", "i", "\xC3\xA4", "\xC5\x98",
                                      "\xD0\x96", "u\xCC\x88", "\xE6\xA8\xBD", " ", "-", "\t");
    return rc::gen::map(rc::gen::container<std::vector<std::string>>(letter),
                        [](const std::vector<std::string>& letters) {
                            std::string mark;
                            for (const std::string& one : letters) {
                                mark += one;
                            }
                            return mark;
                        });
}

Order anyOrder()
{
    const auto all = stocks();
    Order order{.cellarMark = cellar,
                .labels = {},
                .stock = all[*rc::gen::inRange<std::size_t>(0, all.size())],
                .distance = metres(*rc::gen::inRange(40, 151) / 100.0)};
    SeededRandom random(*rc::gen::arbitrary<std::uint64_t>());
    const int count = *rc::gen::inRange(1, 30);
    for (int i = 0; i < count; ++i) {
        order.labels.push_back({scan::randomCode(cellar, random), *marks()});
    }
    order.from = order.stock.kind == StockKind::Sheet
                     ? *rc::gen::inRange(1, order.stock.positions() + 1)
                     : 1;
    return order;
}

void checkLabel(const PlacedLabel& label)
{
    std::vector<Box> parts;
    for (const PlacedSymbol& symbol : label.symbols) {
        parts.push_back(symbol.quiet);  // so that its quiet zone is free
        RC_ASSERT(symbol.quiet.width - symbol.modules().width > 7.9 * symbol.module);
    }
    for (const TextLine& line : label.lines) {
        parts.push_back(line.box());
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        RC_ASSERT(isWithin(parts[i], label.cell));
        for (std::size_t j = 0; j < i; ++j) {
            RC_ASSERT(!overlap(parts[i], parts[j]));
        }
    }
}

std::string withoutSpaces(const std::string& text)
{
    std::string rest;
    std::copy_if(text.begin(), text.end(), std::back_inserter(rest),
                 [](char c) { return static_cast<unsigned char>(c) > ' '; });
    return rest;
}

// The code first, then all of the mark.
void checkWords(const PlacedLabel& label)
{
    RC_ASSERT(!label.lines.empty());
    RC_ASSERT(label.lines[0].text == scan::shown(label.words.code));
    RC_ASSERT(label.lines[0].size >= smallestCode);
    std::string mark;
    for (std::size_t i = 1; i < label.lines.size(); ++i) {
        mark += label.lines[i].text;
    }
    RC_ASSERT(withoutSpaces(mark) == withoutSpaces(label.words.mark));
}

}  // namespace

RC_GTEST_PROP(Labels, LieInTheirCellsOnThePageWithoutOverlaps, ())
{
    const Order order = anyOrder();
    const auto sheets = layOut(order);
    if (!sheets) {
        RC_ASSERT(sheets.error().subject == "label stock");
        RC_ASSERT(order.distance.si() > farthestOf(order.stock)->si());
        return;
    }
    std::size_t count = 0;
    for (const Page& page : sheets->pages) {
        for (std::size_t i = 0; i < page.labels.size(); ++i) {
            const PlacedLabel& label = page.labels[i];
            RC_ASSERT(isWithin(label.cell, {0, 0, sheets->pageWidth, sheets->pageHeight}));
            RC_ASSERT((i == 0 || !overlap(label.cell, page.labels[i - 1].cell)));
            RC_ASSERT(label.symbols.front().module == *moduleFor(order.distance));
            RC_ASSERT(label.words == order.labels[count++]);
            checkLabel(label);
            checkWords(label);
        }
    }
    RC_ASSERT(count == order.labels.size());
}

// What is beside the labels of plain paper touches none of them.
RC_GTEST_PROP(Labels, KeepCutMarksOutsideOfPlates, ())
{
    Order order = anyOrder();
    order.stock = *findStock(*rc::gen::element<std::string_view>("plate-a4", "plate-letter"));
    order.from = 1;
    const auto sheets = layOut(order);
    RC_ASSERT(sheets.has_value());
    for (const Page& page : sheets->pages) {
        for (const Stroke& stroke : page.strokes) {
            const Box box{std::min(stroke.x1, stroke.x2), std::min(stroke.y1, stroke.y2),
                          std::abs(stroke.x2 - stroke.x1), std::abs(stroke.y2 - stroke.y1)};
            const Box thick = within(box, -0.1);
            RC_ASSERT(isWithin(thick, {0, 0, sheets->pageWidth, sheets->pageHeight}));
            for (const PlacedLabel& label : page.labels) {
                RC_ASSERT(!overlap(thick, label.cell));
            }
        }
    }
}

RC_GTEST_PROP(DarkRuns, CoverTheDarkModulesOnce, ())
{
    SeededRandom random(*rc::gen::arbitrary<std::uint64_t>());
    const auto grid = scan::makeQr(scan::labelText({cellar, scan::randomCode(cellar, random)}));
    std::vector<int> painted(grid->modules.size());
    for (const DarkRun& run : darkRuns(*grid)) {
        for (int row = run.row; row < run.row + run.height; ++row) {
            for (int column = run.column; column < run.column + run.width; ++column) {
                ++painted[static_cast<std::size_t>(row * grid->size + column)];
            }
        }
    }
    for (std::size_t i = 0; i < painted.size(); ++i) {
        RC_ASSERT(painted[i] == (grid->modules[i] ? 1 : 0));
    }
}

}  // namespace spile::labels
