#include "core/base/simulated.hpp"
#include "core/labels/sheets.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace spile::labels {

namespace {

using testing::HasSubstr;

const std::string cellar = "7K2Q";

std::vector<LabelWords> someLabels(int count, const std::string& mark = "Rum 3")
{
    SeededRandom random(5);
    std::vector<LabelWords> labels;
    for (int i = 0; i < count; ++i) {
        labels.push_back({scan::randomCode(cellar, random), mark});
    }
    return labels;
}

Order orderOn(std::string_view stock, int count = 1)
{
    return {.cellarMark = cellar, .labels = someLabels(count), .stock = *findStock(stock)};
}

std::vector<std::string> textsOf(const PlacedLabel& label)
{
    std::vector<std::string> texts;
    for (const TextLine& line : label.lines) {
        texts.push_back(line.text);
    }
    return texts;
}

}  // namespace

TEST(Stocks, AreFoundByName)
{
    EXPECT_EQ(findStock("a4-8")->says, "A4, 8 of 99.1 x 67.7 mm");
    EXPECT_EQ(findStock("a4-9").error().code, ErrorCode::NotFound);
    EXPECT_EQ(findStock(usualPlate)->kind, StockKind::Plain);
    EXPECT_EQ(findStock(usualRoll)->kind, StockKind::Roll);
    std::set<std::string_view> names;
    for (const Stock& stock : stocks()) {
        names.insert(stock.name);
    }
    EXPECT_EQ(names.size(), stocks().size());
}

TEST(Stocks, HaveAsManyLabelsAsTheySay)
{
    for (const Stock& stock : stocks()) {
        if (stock.kind == StockKind::Sheet) {
            EXPECT_THAT(std::string(stock.says),
                        HasSubstr(" " + std::to_string(stock.positions()) + " of "));
        }
        EXPECT_TRUE(farthestOf(stock)) << stock.says << " serves nobody";
    }
}

// Sheets are cut from the middle; two of the margins from memory, common practice.
TEST(Stocks, StandInTheMiddleOfTheirPages)
{
    for (const Stock& stock : stocks()) {
        if (stock.kind != StockKind::Plain) {
            const Box first = stock.cell(0);
            const Box last = stock.cell(stock.positions() - 1);
            EXPECT_NEAR(first.left, stock.pageWidth - last.right(), 1e-9) << stock.says;
            EXPECT_NEAR(first.top, stock.pageHeight - last.bottom(), 1e-9) << stock.says;
        }
    }
    EXPECT_NEAR(findStock("a4-8")->top, 13.1, 0.01);
    EXPECT_NEAR(findStock("letter-10")->top, 12.7, 0.01);
    EXPECT_NEAR(findStock("letter-10")->left, 3.97, 0.01);
}

TEST(Plate, HasTwoSymbolsAndTheCodeBetween)
{
    const auto sheets = layOut(orderOn(usualPlate));
    ASSERT_TRUE(sheets);
    const PlacedLabel& plate = sheets->pages.front().labels.front();
    ASSERT_EQ(plate.symbols.size(), 2U);
    EXPECT_DOUBLE_EQ(plate.symbols[0].module, 1.2);
    EXPECT_DOUBLE_EQ(plate.cell.width, 2 * 33 * 1.2 + plateMiddle);
    for (const TextLine& line : plate.lines) {
        EXPECT_GT(line.box().left, plate.symbols[0].quiet.right());
        EXPECT_LT(line.box().right(), plate.symbols[1].quiet.left);
    }
    EXPECT_EQ(textsOf(plate).at(0), scan::shown(plate.words.code));
    EXPECT_GT(plate.lines.at(0).size, 9) << "large";
    EXPECT_EQ(textsOf(plate).at(1), "Rum 3");
}

TEST(Plate, GrowsWithTheDistanceAndTurnsThePage)
{
    Order order = orderOn(usualPlate);
    EXPECT_LT(layOut(order)->pageWidth, layOut(order)->pageHeight);
    order.distance = farthestReading;
    for (const std::string_view paper : {"plate-a4", "plate-letter"}) {
        order.stock = *findStock(paper);
        const auto far = layOut(order);
        ASSERT_TRUE(far) << paper;
        EXPECT_GT(far->pageWidth, far->pageHeight);
        EXPECT_DOUBLE_EQ(far->module, 3.0);
    }
}

TEST(Plate, AloneHasCutMarksAndItsPageALineOf50Millimetres)
{
    const auto plain = layOut(orderOn(usualPlate));
    const Page& page = plain->pages.front();
    ASSERT_EQ(page.strokes.size(), 8U + 3U);
    const auto isRule = [](const Stroke& stroke) {
        return stroke.y1 == stroke.y2 && std::abs(stroke.x2 - stroke.x1 - 50) < 1e-9;
    };
    EXPECT_EQ(std::count_if(page.strokes.begin(), page.strokes.end(), isRule), 1);
    EXPECT_EQ(page.lines.at(0).text, "50 mm");
    EXPECT_TRUE(layOut(orderOn("a4-8"))->pages.front().strokes.empty());
    EXPECT_TRUE(layOut(orderOn(usualRoll))->pages.front().strokes.empty());
}

TEST(Sheets, BeginAtAnyPositionAndGoOnOverThePages)
{
    Order order = orderOn("a4-8", 11);
    order.from = 6;
    const auto sheets = layOut(order);
    ASSERT_TRUE(sheets);
    ASSERT_EQ(sheets->pages.size(), 2U);
    ASSERT_EQ(sheets->pages[0].labels.size(), 3U);
    EXPECT_EQ(sheets->pages[1].labels.size(), 8U);
    EXPECT_EQ(sheets->pages[0].labels[0].cell, order.stock.cell(5));
    EXPECT_EQ(sheets->pages[1].labels[0].cell, order.stock.cell(0));
    EXPECT_EQ(sheets->pages[1].labels[7].words, order.labels.back());
    order.from = 9;
    EXPECT_EQ(layOut(order).error(), (Error{ErrorCode::OutOfRange, "position", "9", "1 to 8"}));
    order.from = 0;
    EXPECT_FALSE(layOut(order));
    order.stock = *findStock(usualRoll);
    order.from = 2;
    EXPECT_FALSE(layOut(order));
    order.from = 1;
    EXPECT_EQ(layOut(order)->pages.size(), 11U);
}

TEST(Sheets, TestPageShowsEveryLabelAndTheLine)
{
    Order order = orderOn("a4-24", 2);
    order.testPage = true;
    order.distance = metres(0.5);
    const auto sheets = layOut(order);
    ASSERT_TRUE(sheets);
    ASSERT_EQ(sheets->pages.size(), 2U);
    EXPECT_EQ(sheets->pages[0].strokes.size(), 24U * 4 + 3);
    EXPECT_TRUE(sheets->pages[0].labels.empty());
    EXPECT_EQ(sheets->pages[1].labels.size(), 2U);
}

TEST(Sheets, TakeOneSymbolWhereTwoDoNotFit)
{
    Order order = orderOn("a4-8");
    EXPECT_EQ(layOut(order)->pages[0].labels[0].symbols.size(), 2U);
    order.distance = metres(0.8);
    EXPECT_EQ(layOut(order)->pages[0].labels[0].symbols.size(), 1U);
}

TEST(Sheets, SayWhatSizeIsNeededWhereNoneFits)
{
    Order order = orderOn("a4-24");
    order.distance = metres(1.0);
    const auto refused = layOut(order);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(refused.error().value, "A4, 24 of 70 x 37 mm");
    EXPECT_THAT(refused.error().limit, HasSubstr("from 1.0 m labels of "));
    EXPECT_THAT(refused.error().limit, HasSubstr("can be read from up to 0.55 m"));
    const double side = sideOf(2.0);
    EXPECT_FALSE(arrange(side, side, 2.0));
    order.distance = metres(0.55);
    EXPECT_TRUE(layOut(order));
    order.distance = metres(0.6);
    EXPECT_FALSE(layOut(order));
}

TEST(Sheets, RefuseWhatIsNoLabel)
{
    Order order = orderOn("a4-8");
    order.labels.clear();
    EXPECT_EQ(layOut(order).error().subject, "labels");
    order.labels.assign(mostLabels + 1, someLabels(1).front());
    EXPECT_EQ(layOut(order).error().subject, "labels");
    order.labels = {{"7K2QFN", ""}};
    EXPECT_EQ(layOut(order).error().code, ErrorCode::Malformed);
    order.labels = someLabels(1);
    order.cellarMark = "AAAA";
    EXPECT_EQ(layOut(order).error().code, ErrorCode::Malformed) << "of another cellar";
}

TEST(Mark, IsWrappedAtSpacesBeforeItGetsSmall)
{
    const auto lines = fitText("7K2-QFM", "Bourbon from the north wall", {0, 0, 50, 40});
    ASSERT_TRUE(lines);
    ASSERT_GT(lines->size(), 2U);
    std::string joined;
    for (std::size_t i = 1; i < lines->size(); ++i) {
        joined += (i == 1 ? "" : " ") + (*lines)[i].text;
    }
    EXPECT_EQ(joined, "Bourbon from the north wall");
}

TEST(Mark, IsBrokenWithinAWordRatherThanUnreadable)
{
    const std::string word = "Fassreifenverkleidungsholz";
    const auto lines = fitText("7K2-QFM", word, {0, 0, 26, 30});
    ASSERT_TRUE(lines);
    std::string joined;
    for (std::size_t i = 1; i < lines->size(); ++i) {
        joined += (*lines)[i].text;
        EXPECT_GT((*lines)[i].size, 3);
    }
    EXPECT_EQ(joined, word);
    EXPECT_GT(lines->size(), 2U);
}

TEST(Mark, ThatTheFontLacksIsTold)
{
    Order order = orderOn("a4-8");
    order.labels.front().mark = "F\xC3\xA4sschen \xC5\x98\xC3\xAD\xC4\x8D";
    EXPECT_TRUE(layOut(order)->incomplete.empty());
    order.labels.front().mark = "\xE6\xA8\xBD 3";
    EXPECT_EQ(layOut(order)->incomplete, std::vector{order.labels.front().mark});
}

}  // namespace spile::labels
