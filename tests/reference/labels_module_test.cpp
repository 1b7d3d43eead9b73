// The sizes that the measurements of the reader ask for, and the symbol of the standard.
#include "core/labels/label_layout.hpp"

#include <gtest/gtest.h>

namespace spile::labels {

// 2.0 pixels a module, half as much again, 1507 pixels of focal length: see moduleFor().
TEST(ModuleFor, IsThatOfTheMeasurements)
{
    EXPECT_DOUBLE_EQ(*moduleFor(metres(0.4)), 0.8);
    EXPECT_DOUBLE_EQ(*moduleFor(metres(0.6)), 1.2);
    EXPECT_DOUBLE_EQ(*moduleFor(metres(0.8)), 1.6);
    EXPECT_DOUBLE_EQ(*moduleFor(metres(1.0)), 2.0);
    EXPECT_DOUBLE_EQ(*moduleFor(metres(1.5)), 3.0);
}

TEST(ModuleFor, GivesLabelsOfTheSizesThatWereMeasured)
{
    EXPECT_NEAR(sideOf(*moduleFor(metres(0.6))), 40, 0.5);
    EXPECT_NEAR(sideOf(*moduleFor(metres(0.8))), 53, 0.5);
    EXPECT_NEAR(sideOf(*moduleFor(metres(1.0))), 66, 0.5);
}

TEST(ModuleFor, SaysItsRange)
{
    EXPECT_EQ(moduleFor(metres(0.39)).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(moduleFor(metres(1.51)).error().limit, "0.4 to 1.5 m");
    EXPECT_EQ(moduleFor(metres(0.0 / 0.0)).error().code, ErrorCode::NotFinite);
}

// ISO/IEC 18004: version 2 has 25 modules a side, and its quiet zone is 4 modules wide.
TEST(Symbol, IsOfVersionTwo)
{
    const auto grid = scan::makeQr(scan::labelText({"7K2Q", "7K2QFM"}));
    ASSERT_TRUE(grid);
    EXPECT_EQ(grid->size, symbolModules);
    EXPECT_EQ(quietModules, 4);
}

}  // namespace spile::labels
