// Source: the Williams square for four treatments, A B D C / B C A D / C D B A / D A C B, as
// textbooks on crossover trials print it. From memory.
#include "core/panel/serving_order.hpp"

#include <gtest/gtest.h>

namespace spile::panel {

TEST(WilliamsRow, IsThePublishedSquareForFour)
{
    EXPECT_EQ(williamsRow(4, 0), (std::vector<int>{0, 1, 3, 2}));
    EXPECT_EQ(williamsRow(4, 1), (std::vector<int>{1, 2, 0, 3}));
    EXPECT_EQ(williamsRow(4, 2), (std::vector<int>{2, 3, 1, 0}));
    EXPECT_EQ(williamsRow(4, 3), (std::vector<int>{3, 0, 2, 1}));
}

}  // namespace spile::panel
