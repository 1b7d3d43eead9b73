// Many observations of one device's clock at once: the work is counted in SQLite's steps, not in
// time.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/observing.hpp"
#include "core/cellar/checking.hpp"
#include "tests/support/fleet.hpp"
#include "tests/support/sqlite_steps.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

// A device that is started anew so often, records twice each time and says that its clock is wrong.
std::int64_t stepsToMakeTheStateAnew(int starts)
{
    support::Fleet fleet(1);
    Cellar& cellar = fleet.cellar(0);
    SimulatedClock& clock = fleet.at(0).clock;
    for (int start = 1; start <= starts; ++start) {
        clock.reboot(
            BootId({static_cast<std::uint8_t>(start), static_cast<std::uint8_t>(start >> 8), 1}));
        clock.pass(std::chrono::minutes(5));
        for (int i = 0; i < 2; ++i) {
            EXPECT_TRUE(recordDraw(cellar, {.barrel = fleet.small().barrel,
                                            .volume = millilitres(10),
                                            .method = "sample hole"}));
        }
        EXPECT_TRUE(observeOwnClock(cellar, {clock.now() + std::chrono::hours(1), 0}));
    }
    const Sha256 before = *stateRoot(cellar);
    const std::int64_t taken = support::SqliteSteps::of([&] {
        auto change = cellar.ledger().change();
        ASSERT_TRUE(cellar.ledger().makeStateAnew(*change));
        ASSERT_TRUE(change->commit());
    });
    EXPECT_EQ(*stateRoot(cellar), before);
    return taken;
}

}  // namespace

TEST(ClocksAtScale, AChainIsReadOnceForAllStartsOfItsDevice)
{
    const support::SqliteSteps steps;
    const std::int64_t few = stepsToMakeTheStateAnew(60);
    const std::int64_t many = stepsToMakeTheStateAnew(960);
    EXPECT_GT(few, 10'000) << "the steps are counted";
    EXPECT_LT(many, 18 * few) << "sixteen times the starts: " << few << ", " << many;
}

}  // namespace spile::cellar
