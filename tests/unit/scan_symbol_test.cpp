#include "core/scan/symbol.hpp"

#include <gtest/gtest.h>
#include <string>

namespace spile::scan {

TEST(MakeQr, GivesVersionTwoForTheLengthsOfLabels)
{
    for (const std::size_t length : {11U, 12U, 20U}) {
        const auto grid = makeQr(std::string(length, 'K'));
        ASSERT_TRUE(grid) << length;
        EXPECT_EQ(grid->size, 25) << length;
        EXPECT_EQ(grid->modules.size(), 625U) << length;
    }
    EXPECT_EQ(makeQr("S1K4TN7K2Q")->size, 21);  // ten fit version 1
}

TEST(MakeQr, HasFinderPatternsInThreeCorners)
{
    const auto grid = makeQr("S1K4TN7K2QFM");
    ASSERT_TRUE(grid);
    const auto isFinder = [&](int top, int left) {
        for (int row = 0; row < 7; ++row) {
            for (int column = 0; column < 7; ++column) {
                const int ring = std::max(std::abs(row - 3), std::abs(column - 3));
                if (grid->dark(top + row, left + column) != (ring != 2)) {
                    return false;
                }
            }
        }
        return true;
    };
    EXPECT_TRUE(isFinder(0, 0));
    EXPECT_TRUE(isFinder(0, 18));
    EXPECT_TRUE(isFinder(18, 0));
    EXPECT_FALSE(isFinder(18, 18));
}

TEST(MakeQr, RefusesOtherLengthsAndCharacters)
{
    EXPECT_EQ(makeQr("").error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(makeQr(std::string(21, 'A')).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(makeQr("S1K4TN7k2QFM").error().code, ErrorCode::Malformed);
    EXPECT_EQ(makeQr("\xC3\x84").error().code, ErrorCode::Malformed);
}

}  // namespace spile::scan
