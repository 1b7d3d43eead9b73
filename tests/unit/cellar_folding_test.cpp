#include "core/cellar/folding.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <vector>

namespace spile::cellar {

TEST(Folded, LeavesCaseAndAccentsOut)
{
    EXPECT_EQ(folded("Rum 3"), "rum 3");
    EXPECT_EQ(folded("ÀÉÎÕÜÇÑÝ"), "aeioucny");
    EXPECT_EQ(folded("àéîõüçñÿ"), "aeioucny");
    EXPECT_EQ(folded("Großes Fæß"), "grosses faess");
    EXPECT_EQ(folded("Łódź Žižka Őrség İzmir ĳ Œuf"), "lodz zizka orseg izmir ij oeuf");
    EXPECT_EQ(folded("e\xcc\x81"), "e");  // a combining accent
}

TEST(Folded, KnowsEveryLetterOfBothBlocks)
{
    for (std::uint32_t character = 0xc0; character < 0x180; ++character) {
        const std::string text = {static_cast<char>(0xc0U | (character >> 6U)),
                                  static_cast<char>(0x80U | (character & 0x3fU))};
        const std::string result = folded(text);
        const bool sign = character == 0xd7 || character == 0xf7;  // times, divided by
        const bool letters =
            std::all_of(result.begin(), result.end(), [](char c) { return c >= 'a' && c <= 'z'; });
        EXPECT_EQ(letters, !sign) << character << ": " << result;
    }
}

TEST(Folded, LeavesAllElseAsItIs)
{
    EXPECT_EQ(folded("Ж 7 · €"), "Ж 7 · €");
    EXPECT_EQ(folded(""), "");
    EXPECT_EQ(folded("a\xc3"), "a\xc3");          // cut off
    EXPECT_EQ(folded("\xc3(\x80"), "\xc3(\x80");  // no UTF-8
}

TEST(NaturalKey, PutsMarksInTheBrewersOrder)
{
    const std::vector<std::string> wanted = {
        "",       "7",        "12",      "Äpfel 2", "apfel 10", "Rum",      "rum 3",
        "RUM 12", "Rum 12 a", "Rum 12b", "Rum 100", "Rum 1000", "Rum left", "Rye 1"};
    std::vector<std::string> sorted = wanted;
    std::reverse(sorted.begin(), sorted.end());
    std::sort(sorted.begin(), sorted.end(), [](const std::string& a, const std::string& b) {
        return naturalKey(a, "AAAAAA") < naturalKey(b, "AAAAAA");
    });
    EXPECT_EQ(sorted, wanted);
}

TEST(NaturalKey, SettlesEqualMarksByTheCode)
{
    EXPECT_LT(naturalKey("Rum 3", "7K2QFM"), naturalKey("rum 03", "7K2QFN"));
    EXPECT_GT(naturalKey("Rum 3", "7K2QFN"), naturalKey("rum 03", "7K2QFM"));
    EXPECT_NE(naturalKey("Rum 0", "7K2QFM"), naturalKey("Rum", "7K2QFM"));
    EXPECT_LT(naturalKey("Rum 0", "7K2QFM"), naturalKey("Rum 1", "7K2QFM"));
    EXPECT_LT(naturalKey(std::string(24, '8'), ""), naturalKey(std::string(24, '9'), ""));
}

}  // namespace spile::cellar
