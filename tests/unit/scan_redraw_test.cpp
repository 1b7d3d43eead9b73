#include "core/scan/live_reader.hpp"
#include "core/scan/redraw.hpp"
#include "core/scan/redraw_confirm.hpp"
#include "core/scan/symbol.hpp"
#include "core/scan/zxing_reading.hpp"
#include "tests/support/damaged_labels.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::scan {

using picture::Image;
using picture::LuminanceView;
using support::cover;
using support::drawSymbol;
using support::paste;
using support::plainPicture;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

static const char* const text = "S1K4TN7K2QFM";

static Image onOak(const Image& symbol)
{
    Image frame = plainPicture(960, 540, 90);
    paste(frame, symbol, 400, 200);
    return frame;
}

static std::vector<std::string> redrawnIn(const Image& frame)
{
    Redrawer redrawer;
    std::vector<std::string> texts;
    for (const Code& code : redrawer.read(viewOf(frame))) {
        texts.push_back(code.text);
    }
    return texts;
}

static bool isReadByZxing(const Image& frame) { return !readByZxing(viewOf(frame), {}).empty(); }

TEST(Redrawer, ReadsALabelWhoseFinderIsGone)
{
    for (const auto& [column, row] : {std::pair{-1, -1}, {17, -1}, {-1, 17}}) {
        SCOPED_TRACE(testing::Message() << column << ", " << row);
        Image symbol = drawSymbol(text);
        cover(symbol, column, row, 9, 9, 60);
        const Image frame = onOak(symbol);
        EXPECT_FALSE(isReadByZxing(frame));
        EXPECT_THAT(redrawnIn(frame), ElementsAre(text));
    }
}

TEST(Redrawer, ReadsALabelOfWhichASideIsGone)
{
    for (const auto& [column, row, columns, rows] :
         {std::array{-4, -4, 8, 33}, {21, -4, 8, 33}, {-4, -4, 33, 8}, {-4, 21, 33, 8}}) {
        SCOPED_TRACE(testing::Message() << column << ", " << row);
        Image symbol = drawSymbol(text);
        cover(symbol, column, row, columns, rows, 90);
        const Image frame = onOak(symbol);
        EXPECT_FALSE(isReadByZxing(frame));
        EXPECT_THAT(redrawnIn(frame), ElementsAre(text));
    }
}

TEST(Redrawer, ReadsAPaleLabel)
{
    const Image frame = onOak(drawSymbol(text, {.dark = 100, .light = 116}));
    EXPECT_FALSE(isReadByZxing(frame));
    EXPECT_THAT(redrawnIn(frame), ElementsAre(text));
}

TEST(Redrawer, ReadsATiltedDamagedLabelAndPlacesItsCorners)
{
    Image symbol = drawSymbol(text);
    cover(symbol, -1, 17, 9, 9, 200);
    const Image frame = support::seenAt(symbol, {400, 150, 540, 190, 520, 330, 380, 350}, 960, 540);
    EXPECT_FALSE(isReadByZxing(frame));
    Redrawer redrawer;
    const auto codes = redrawer.read(viewOf(frame));
    ASSERT_THAT(codes, SizeIs(1));
    EXPECT_EQ(codes[0].text, text);
    // The quiet zone takes 4 of 33 modules of each side, along which perspective hardly counts.
    EXPECT_NEAR(codes[0].corners[0].x, 415, 6);
    EXPECT_NEAR(codes[0].corners[0].y, 177, 6);
    EXPECT_NEAR(codes[0].corners[2].x, 506, 6);
    EXPECT_NEAR(codes[0].corners[2].y, 316, 6);
}

TEST(Redrawer, ReadsEachOfTwoDamagedLabelsWithTheirFinders)
{
    Image frame = plainPicture(960, 540, 90);
    Image symbol = drawSymbol(text);
    cover(symbol, 9, 9, 6, 6, 30);
    paste(frame, symbol, 100, 200);
    paste(frame, drawSymbol("S1K4TNZZZZZZ"), 600, 220);
    EXPECT_THAT(redrawnIn(frame), testing::UnorderedElementsAre(text, "S1K4TNZZZZZZ"));
}

TEST(ReadPicture, ReadsDamagedSymbolsOfOtherSizes)
{
    // Level H of 8, 16 and 24 characters: 21, 25 and 29 modules.
    for (const char* other : {"CASK 7AB", "CASK 7 LOT 31 AB", "CASK 7 LOT 31 AB 2026 XY"}) {
        Image symbol = drawSymbol(other);
        cover(symbol, -1, -1, 9, 9, 60);
        const Image frame = onOak(symbol);
        EXPECT_FALSE(isReadByZxing(frame));
        const auto codes = readPicture(viewOf(frame)).value();
        ASSERT_THAT(codes, SizeIs(1)) << other;
        EXPECT_EQ(codes[0].text, other);
        EXPECT_NEAR(codes[0].corners[0].x, 416, 6);
        EXPECT_NEAR(codes[0].corners[0].y, 216, 6);
    }
}

TEST(ReadAny, RefusesWhatDoesNotAgreeWithTheModules)
{
    const redraw::KnownPatterns patterns(21);
    const auto grid = encodeQr("CASK 7AB", QrLevel::H);
    ASSERT_TRUE(grid);
    ASSERT_EQ(grid->size, 21);
    redraw::Softs softs;
    for (const bool dark : grid->modules) {
        softs.push_back(dark ? 1.0F : -1.0F);
    }
    redraw::Plane drawn;
    const auto code = redraw::readAny(patterns, softs, drawn);
    ASSERT_TRUE(code);
    EXPECT_EQ(code->text, "CASK 7AB");
    // Level L of the same size: ZXing reads it, but level L is not trusted.
    const Image low = drawSymbol("CASK 7AB", {.pixelsPerModule = 1, .quietZone = 0, .eccLevel = 1});
    ASSERT_EQ(low.width, 21);
    for (std::size_t i = 0; i < softs.size(); ++i) {
        softs[i] = low.pixels[i] < 128 ? 1.0F : -1.0F;
    }
    EXPECT_FALSE(redraw::readAny(patterns, softs, drawn));
}

TEST(Redrawer, TellsHowClearWhatItDoesNotReadIs)
{
    Image symbol = drawSymbol(text);
    cover(symbol, 8, 0, 10, 25, 30);
    Redrawer redrawer;
    const Image covered = onOak(symbol);
    EXPECT_THAT(redrawer.read(viewOf(covered)), IsEmpty());
    EXPECT_GT(redrawer.unread().fit, 0.6F);
    EXPECT_NEAR(redrawer.unread().module, 4, 0.2);
    EXPECT_GT(redrawer.unread().damage, 0.02F);
    EXPECT_THAT(redrawer.unread().softs, SizeIs(625));
    const Image blank = plainPicture(960, 540);
    EXPECT_THAT(redrawer.read(viewOf(blank)), IsEmpty());
    EXPECT_EQ(redrawer.unread().fit, 0);
}

TEST(Redrawer, ReadsNothingInNoise)
{
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
        EXPECT_THAT(redrawnIn(support::noiseOnly(960, 540, seed)), IsEmpty()) << seed;
    }
}

TEST(Redrawer, AnswersTinyViews)
{
    for (const int width : {1, 2, 31, 33, 40, 64}) {
        for (const int height : {1, 2, 31, 33, 40, 64}) {
            EXPECT_THAT(redrawnIn(support::noiseOnly(width, height, 1)), IsEmpty());
        }
    }
}

}  // namespace spile::scan
