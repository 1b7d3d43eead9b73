// A cellar that has grown is opened by reading as little as a small one. Counted, not timed.
#include "core/cellar/queries.hpp"
#include "tests/bench/grown_cellar.hpp"
#include "tests/support/counting_vfs.hpp"
#include "tests/support/temp_folder.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

struct Reads {
    std::uint64_t opening = 0, due = 0, barrel = 0;
};

Reads readsOf(std::int64_t entries)
{
    support::VfsCounter& counter = support::registerCountingVfs();
    counter.passSyncsOn(false);
    support::TempFolder folder;
    {
        bench::GrownCellar grown(folder.path() / "grown");
        grown.growTo(entries);
    }
    counter.reset();
    support::RealDevice device(folder.path() / "grown");
    const auto cellar = device.openOrMake();
    EXPECT_TRUE(cellar);
    Reads reads{counter.reads(), 0, 0};
    counter.reset();
    constexpr int page = 50;
    EXPECT_EQ(barrelsDue((**cellar).database(), device.clock.now() + std::chrono::days(4000),
                         {instantFromMs(0), {}}, page)
                  ->size(),
              std::min<std::size_t>(page, static_cast<std::size_t>(entries) / 100));
    reads.due = counter.reads();
    counter.reset();
    EXPECT_FALSE(historyOf((**cellar).database(), bench::GrownCellar::barrel(7))->tastings.empty());
    reads.barrel = counter.reads();
    return reads;
}

}  // namespace

TEST(Fault66_CellarThatHasGrown, IsOpenedByAsFewReadsAsASmallOne)
{
    const Reads few = readsOf(6'000);
    const Reads many = readsOf(36'000);
    // Trees are a level deeper here and there; nothing is read through.
    constexpr std::uint64_t levels = 12;
    EXPECT_LE(many.opening, few.opening + levels);
    EXPECT_LE(many.due, few.due + 2 * levels);
    EXPECT_LE(many.barrel, few.barrel + 4 * levels);
    EXPECT_GT(many.barrel, 0U);
}

}  // namespace spile::cellar
