// A page of words with a symbol: sound as a PDF, its words and its symbol found on the print.
#include "core/labels/pdf.hpp"
#include "core/labels/text_page.hpp"
#include "core/scan/reader.hpp"
#include "tests/support/printed_pages.hpp"
#include "tests/support/temp_folder.hpp"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::labels {

namespace {

using testing::HasSubstr;

TextPage anyPage()
{
    return {.paper = Paper::A4,
            .title = "A page of the house",
            .above = {"First words, many enough that they do not go into one line of the page and "
                      "are broken at a space.",
                      "More words."},
            .symbol = "S3000000000000000000000000000000000000000000000000000000000",
            .codes = {"0000-0000-0000-0000-0000-0000-0000", "1111-2222-3333-4444-5555-6666-7777"},
            .below = {"Last words."}};
}

}  // namespace

TEST(TextPage, StaysWithinItsPageAndItsPartsFollowOneAnother)
{
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        TextPage page = anyPage();
        page.paper = paper;
        const auto sheets = layOut(page);
        ASSERT_TRUE(sheets);
        ASSERT_EQ(sheets->pages.size(), 1U);
        const Page& made = sheets->pages.front();
        double lowest = 0;
        const Box symbol = made.labels.at(0).symbols.at(0).quiet;
        int above = 0;
        int below = 0;
        for (const TextLine& line : made.lines) {
            const Box box = line.box();
            EXPECT_GE(box.left, 19.9) << line.text;
            EXPECT_LE(box.right(), sheets->pageWidth - 19.9) << line.text;
            EXPECT_LE(box.bottom(), sheets->pageHeight - 20) << line.text;
            EXPECT_GE(box.top, lowest) << line.text << " runs into what is above it";
            EXPECT_TRUE(box.bottom() <= symbol.top || box.top >= symbol.bottom()) << line.text;
            (box.bottom() <= symbol.top ? above : below) += 1;
            lowest = box.bottom();
        }
        EXPECT_EQ(above, 4) << "the title, a paragraph in two lines, one in one";
        EXPECT_EQ(below, 3);
    }
}

TEST(TextPage, AsAPdfIsSoundAndItsSymbolIsReadFromThePrint)
{
    const TextPage page = anyPage();
    const auto sheets = layOut(page);
    ASSERT_TRUE(sheets);
    const support::TempFolder folder;
    const Path file = folder.path() / "page.pdf";
    std::ofstream(file, std::ios::binary) << asText(*pdfOf(*sheets, "A page"));
    EXPECT_EQ(support::wrongIn(file), "");
    const std::string words = support::wordsIn(file);
    for (const std::string& part :
         {page.title, page.above[1], page.codes[0], page.codes[1], page.below[0]}) {
        EXPECT_THAT(words, HasSubstr(part));
    }
    for (const int dots : {100, 200}) {
        const auto pages = support::printed(file, dots);
        ASSERT_EQ(pages.size(), 1U);
        const auto codes = scan::readPicture(picture::viewOf(pages.front()));
        ASSERT_TRUE(codes);
        ASSERT_EQ(codes->size(), 1U) << dots;
        EXPECT_EQ(codes->front().text, page.symbol);
    }
}

TEST(TextPage, RefusesWhatDoesNotFitAndDoesNotRepeatTheSymbol)
{
    TextPage full = anyPage();
    full.below.assign(60, "Words.");
    EXPECT_EQ(layOut(full).error().code, ErrorCode::TooLarge);
    TextPage wide = anyPage();
    wide.symbol.assign(5000, 'A');
    const auto refused = layOut(wide);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Malformed);
    EXPECT_EQ(refused.error().value, "5000 bytes");
}

TEST(TextPage, SaysWhichCharactersTheFontLacks)
{
    TextPage page = anyPage();
    EXPECT_TRUE(layOut(page)->incomplete.empty());
    page.title = "\xE6\xA8\xBD";  // a Chinese character
    EXPECT_EQ(layOut(page)->incomplete, std::vector{page.title});
}

}  // namespace spile::labels
