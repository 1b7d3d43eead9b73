// The whole design for every number of things that a sheet could ask for: exhaustive.
#include "core/panel/serving_order.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <numeric>

namespace spile::panel {

namespace {

constexpr int mostThings = 12;

int rowsOf(int n) { return n % 2 == 0 ? n : 2 * n; }

}  // namespace

TEST(WilliamsRow, AsksForEachThingOnceInEverySession)
{
    for (int n = 1; n <= mostThings; ++n) {
        std::vector<int> all(static_cast<std::size_t>(n));
        std::iota(all.begin(), all.end(), 0);
        for (int session = -3; session < 3 * rowsOf(n); ++session) {
            std::vector<int> row = williamsRow(n, session);
            std::sort(row.begin(), row.end());
            EXPECT_EQ(row, all) << n << ", " << session;
        }
    }
}

TEST(WilliamsRow, PutsEachThingEquallyOftenInEachPlace)
{
    for (int n = 1; n <= mostThings; ++n) {
        std::map<std::pair<std::size_t, int>, int> count;
        for (int session = 0; session < rowsOf(n); ++session) {
            const std::vector<int> row = williamsRow(n, session);
            for (std::size_t place = 0; place < row.size(); ++place) {
                ++count[{place, row[place]}];
            }
        }
        ASSERT_EQ(count.size(), static_cast<std::size_t>(n * n)) << n;
        for (const auto& [where, times] : count) {
            EXPECT_EQ(times, rowsOf(n) / n) << n;
        }
    }
}

TEST(WilliamsRow, PutsEachThingEquallyOftenRightAfterEachOther)
{
    for (int n = 2; n <= mostThings; ++n) {
        std::map<std::pair<int, int>, int> count;
        for (int session = 0; session < rowsOf(n); ++session) {
            const std::vector<int> row = williamsRow(n, session);
            for (std::size_t place = 1; place < row.size(); ++place) {
                ++count[{row[place - 1], row[place]}];
            }
        }
        ASSERT_EQ(count.size(), static_cast<std::size_t>(n * (n - 1))) << n;
        for (const auto& [neighbours, times] : count) {
            EXPECT_EQ(times, rowsOf(n) / n) << n;
        }
    }
}

TEST(WilliamsRow, BeginsAgainAfterTheLastRow)
{
    for (int n = 1; n <= mostThings; ++n) {
        EXPECT_EQ(williamsRow(n, rowsOf(n)), williamsRow(n, 0));
        EXPECT_EQ(williamsRow(n, -1), williamsRow(n, rowsOf(n) - 1));
    }
    EXPECT_EQ(williamsRow(5, 2'147'483'647).size(), 5U);
    EXPECT_EQ(williamsRow(5, -2'147'483'647 - 1).size(), 5U);
    EXPECT_TRUE(williamsRow(0, 4).empty());
}

}  // namespace spile::panel
