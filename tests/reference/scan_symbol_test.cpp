// Source: ISO/IEC 18004, the valid format information sequences, here those of level H, as its
// annex on format information lists them after masking; from memory.
#include "core/scan/symbol.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <string>

namespace spile::scan {

// The copy beside the top left finder: along row 8 from the left, up column 8, without the timing
// patterns in row and column 6.
static std::string formatBits(const ModuleGrid& grid)
{
    std::string bits;
    for (const int column : {0, 1, 2, 3, 4, 5, 7, 8}) {
        bits += grid.dark(8, column) ? '1' : '0';
    }
    for (const int row : {7, 5, 4, 3, 2, 1, 0}) {
        bits += grid.dark(row, 8) ? '1' : '0';
    }
    return bits;
}

TEST(MakeQr, StatesLevelHAndAMask)
{
    for (const char last : std::string("0123456789ABCDEF")) {
        const auto grid = makeQr(std::string("S1K4TN7K2QF") + last);
        ASSERT_TRUE(grid);
        EXPECT_THAT(formatBits(*grid),
                    testing::AnyOf("001011010001001", "001001110111110", "001110011100111",
                                   "001100111010000", "000011101100010", "000001001010101",
                                   "000110100001100", "000100000111011"));
    }
}

}  // namespace spile::scan
