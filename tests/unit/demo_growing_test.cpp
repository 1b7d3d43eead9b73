#include "core/cellar/queries.hpp"
#include "core/cellar/searching.hpp"
#include "demo/cellar/growing.hpp"
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>
#include <set>

namespace spile::demo {

namespace {

std::vector<cellar::BarrelRow> grown(support::Fleet& fleet, std::size_t barrels, std::uint64_t seed)
{
    const auto done = growCellar(fleet.cellar(0), barrels, seed);
    EXPECT_TRUE(done) << support::textOf(done.error());
    return *cellar::barrels(fleet.cellar(0).database(), {}, 10'000);
}

}  // namespace

TEST(GrownCellar, HasAsManyBarrelsAsWantedAndIsSound)
{
    support::Fleet fleet(1);
    const auto rows = grown(fleet, 2000, 7);
    EXPECT_EQ(rows.size(), 2001U);  // and the one that was there
    std::set<std::string> marks;
    std::set<std::string> codes;
    std::size_t full = 0;
    std::size_t tasted = 0;
    for (const auto& row : rows) {
        marks.insert(row.mark);
        codes.insert(row.code);
        full += row.filled ? 1 : 0;
        tasted += row.tastings > 0 ? 1 : 0;
    }
    EXPECT_EQ(marks.size(), 2001U);
    EXPECT_EQ(codes.size(), 2001U);
    EXPECT_EQ(full, 1667U);
    EXPECT_GT(tasted, 800U);
    EXPECT_EQ(support::problemsOf(fleet.cellar(0)), "");
}

TEST(GrownCellar, IsTheSameFromTheSameSeed)
{
    support::Fleet first(1);
    support::Fleet second(1);
    support::Fleet third(1);
    grown(first, 300, 7);
    grown(second, 300, 7);
    grown(third, 300, 8);
    EXPECT_EQ(support::recordBytes(first.cellar(0)), support::recordBytes(second.cellar(0)));
    EXPECT_NE(support::recordBytes(first.cellar(0)), support::recordBytes(third.cellar(0)));
}

}  // namespace spile::demo
