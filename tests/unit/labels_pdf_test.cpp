#include "core/labels/pdf.hpp"
#include "core/labels/pdf_file.hpp"
#include "tests/support/printed_pages.hpp"
#include "tests/support/temp_folder.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::labels {

namespace {

using testing::HasSubstr;
using testing::Not;

Sheets sheetsOf(std::vector<LabelWords> labels, std::string_view stock = "a4-8")
{
    return *layOut({.cellarMark = "7K2Q", .labels = std::move(labels), .stock = *findStock(stock)});
}

const std::string german =
    "F\xC3\xA4\xC3\x9F"
    "chen \xC3\x9C"
    "bung";  // Fäßchen Übung
const std::string czech = "\xC5\x98\xC3\xAD\xC4\x8Dn\xC3\xBD \xC5\xBElu\xC5\xA5";  // Říčný žluť

struct InAFolder : testing::Test {
    support::TempFolder folder;
    Path file = folder.path() / "labels.pdf";

    void write(const Sheets& sheets, const std::string& title = "Barrel labels") const
    {
        const auto bytes = pdfOf(sheets, title);
        ASSERT_TRUE(bytes);
        std::ofstream(file, std::ios::binary) << asText(*bytes);
    }
};

using Pdf = InAFolder;

}  // namespace

TEST_F(Pdf, IsSoundAndItsWordsAreFound)
{
    write(sheetsOf({{"000005", german}, {"000013", czech}}));
    EXPECT_EQ(support::wrongIn(file), "");
    const std::string words = support::wordsIn(file);
    EXPECT_THAT(words, HasSubstr("000-005"));
    EXPECT_THAT(words, HasSubstr("F\xC3\xA4\xC3\x9F"
                                 "chen"));
    EXPECT_THAT(words, HasSubstr("\xC3\x9C"
                                 "bung"));
    EXPECT_THAT(words, HasSubstr("\xC5\x98\xC3\xAD\xC4\x8Dn\xC3\xBD"));
    EXPECT_THAT(words, HasSubstr("\xC5\xBElu\xC5\xA5"));
}

TEST_F(Pdf, IsTheSameForEqualLabelsAndSaysNoDate)
{
    const Sheets sheets = sheetsOf({{"000005", german}});
    const Bytes first = *pdfOf(sheets, "Labels");
    EXPECT_EQ(first, *pdfOf(sheetsOf({{"000005", german}}), "Labels"));
    EXPECT_NE(first, *pdfOf(sheetsOf({{"000013", german}}), "Labels"));
    const std::string text(asText(first));
    for (const char* word : {"/CreationDate", "/ModDate", "/ID", "/Producer", "/Author"}) {
        EXPECT_THAT(text, Not(HasSubstr(word)));
    }
    EXPECT_THAT(text, HasSubstr("/Title <feff004c006100620065006c0073>"));
}

TEST_F(Pdf, EmbedsOnlyTheGlyphsItUses)
{
    EXPECT_LT(pdfOf(sheetsOf({{"000005", "Rum 3"}}), "")->size(), 60'000U);
}

TEST_F(Pdf, HasThePageOfItsStock)
{
    const auto size = [](std::string_view stock) {
        const std::string text(asText(*pdfOf(sheetsOf({{"000005", ""}}, stock), "")));
        const auto at = text.find("/MediaBox");
        return text.substr(at, text.find(']', at) + 1 - at);
    };
    EXPECT_EQ(size("a4-8"), "/MediaBox [0 0 595.2756 841.8898]");
    EXPECT_EQ(size("letter-6"), "/MediaBox [0 0 612 792]");
    EXPECT_EQ(size("roll-100x50"), "/MediaBox [0 0 283.4646 141.7323]");
}

// The line of 50 mm is as long on the printed page.
TEST_F(Pdf, KeepsItsMillimetres)
{
    write(sheetsOf({{"000005", ""}}, usualPlate));
    constexpr int dots = 600;
    const auto pages = support::printed(file, dots);
    ASSERT_EQ(pages.size(), 1U);
    const picture::Image& page = pages.front();
    const int row = static_cast<int>(std::lround((297.0 - 6.0) * dots / 25.4));
    int longest = 0;
    for (int y = row - 3; y <= row + 3; ++y) {
        const auto* line = &page.pixels[static_cast<std::size_t>(y * page.width)];
        const auto dark = std::count_if(line, line + page.width, [](auto p) { return p < 128; });
        longest = std::max(longest, static_cast<int>(dark));
    }
    EXPECT_NEAR(longest * 25.4 / dots, 50 + 0.2, 0.1);  // with the width of its ends
}

TEST(PdfNumbers, ArePlainAndShort)
{
    EXPECT_EQ(number(0), "0");
    EXPECT_EQ(number(-0.00001), "0");
    EXPECT_EQ(number(1.2), "1.2");
    EXPECT_EQ(number(100), "100");
    EXPECT_EQ(number(-2.50004), "-2.5");
    EXPECT_EQ(number(0.12345), "0.1235");
}

TEST(PdfTexts, AreUtf16)
{
    EXPECT_EQ(utf16Hex("A\xC3\x9F"), "004100df");
    EXPECT_EQ(utf16Hex("\xE2\x82\xAC"), "20ac");
    EXPECT_EQ(utf16Hex("\xF0\x9F\x9B\xA2"), "d83ddee2");
    EXPECT_EQ(utf16Hex("\xC3"), "fffd");
}

}  // namespace spile::labels
