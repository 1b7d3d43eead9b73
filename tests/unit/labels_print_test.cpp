// Printed and read back: every symbol of every stock, as poppler rasterises it, is found and read.
#include "core/base/simulated.hpp"
#include "core/labels/pdf.hpp"
#include "core/scan/reader.hpp"
#include "tests/support/printed_pages.hpp"
#include "tests/support/temp_folder.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <gtest/gtest.h>

namespace spile::labels {

namespace {

const std::string cellar = "4TN8";

struct Printed {
    std::string stock;
    double metresAway = 0;
    int dots = 0;
};

Order fullPage(const Printed& printed)
{
    Order order{.cellarMark = cellar,
                .labels = {},
                .stock = *findStock(printed.stock),
                .distance = metres(printed.metresAway)};
    SeededRandom random(std::hash<std::string>()(printed.stock));
    const auto fitted = fit(order.stock, order.distance);
    const int count = fitted ? std::max(2, fitted->stock.positions()) : 0;
    for (int i = 0; i < count; ++i) {
        order.labels.push_back({scan::randomCode(cellar, random),
                                i % 3 == 0 ? "" : "Jamaika \xC3\x9C" + std::to_string(i)});
    }
    return order;
}

// Each symbol of `label`, with nothing else found in its cell.
void expectRead(const PlacedLabel& label, const picture::Image& page, int dots)
{
    const auto codes = scan::readPicture(support::partOf(page, label.cell, dots));
    ASSERT_TRUE(codes);
    EXPECT_EQ(codes->size(), label.symbols.size()) << label.words.code;
    for (const scan::Code& code : *codes) {
        EXPECT_EQ(code.text, scan::labelText({cellar, label.words.code}));
    }
}

std::vector<Printed> allPrints()
{
    std::vector<Printed> prints;
    for (const int dots : {150, 300}) {
        for (const Stock& stock : stocks()) {
            if (stock.kind == StockKind::Plain) {
                for (const double away : {0.4, 0.6, 1.5}) {
                    prints.push_back({std::string(stock.name), away, dots});
                }
            } else {
                prints.push_back({std::string(stock.name), farthestOf(stock)->si(), dots});
                if (farthestOf(stock)->si() > 0.4) {
                    prints.push_back({std::string(stock.name), 0.4, dots});
                }
            }
        }
    }
    return prints;
}

std::string nameOf(const testing::TestParamInfo<Printed>& info)
{
    std::string name = info.param.stock + "_" +
                       std::to_string(std::lround(info.param.metresAway * 100)) + "cm_" +
                       std::to_string(info.param.dots) + "dpi";
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

class Print : public testing::TestWithParam<Printed> {};

}  // namespace

TEST_P(Print, IsReadBack)
{
    const Printed& printed = GetParam();
    const auto sheets = layOut(fullPage(printed));
    ASSERT_TRUE(sheets);
    const support::TempFolder folder;
    const Path file = folder.path() / "labels.pdf";
    std::ofstream(file, std::ios::binary) << asText(*pdfOf(*sheets, "Barrel labels"));
    const auto pages = support::printed(file, printed.dots);
    ASSERT_EQ(pages.size(), sheets->pages.size());
    for (std::size_t i = 0; i < pages.size(); ++i) {
        ASSERT_FALSE(sheets->pages[i].labels.empty());
        for (const PlacedLabel& label : sheets->pages[i].labels) {
            expectRead(label, pages[i], printed.dots);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(EveryStock, Print, testing::ValuesIn(allPrints()), nameOf);

}  // namespace spile::labels
