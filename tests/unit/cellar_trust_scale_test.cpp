// Who belongs, with many devices: the work is counted in SQLite's steps, not in time.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/settling.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/devices.hpp"
#include "core/cellar/set_aside.hpp"
#include "core/ledger/take_in.hpp"
#include "tests/support/fleet.hpp"
#include "tests/support/sqlite_steps.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

DeviceId deviceNo(int number)
{
    return DeviceId({static_cast<std::uint8_t>(number >> 8), static_cast<std::uint8_t>(number), 7});
}

// Admits so many devices that have recorded nothing.
void admitMany(support::Fleet& fleet, int count)
{
    for (int i = 1; i <= count; ++i) {
        ASSERT_TRUE(ledger::admit(fleet.cellar(0).ledger(), deviceNo(i),
                                  "Phone " + std::to_string(i), ledger::DeviceRole::Phone));
    }
}

}  // namespace

TEST(TrustAtScale, AllDevicesAreJudgedInOnePass)
{
    const support::SqliteSteps steps;
    const auto stepsFor = [](int devices) {
        support::Fleet fleet(1);
        admitMany(fleet, devices);
        return support::SqliteSteps::of([&] {
            const auto found = devicesOf(fleet.cellar(0).database());
            ASSERT_TRUE(found);
            EXPECT_EQ(found->rows.size(), static_cast<std::size_t>(devices + 1));
        });
    };
    const std::int64_t few = stepsFor(50);
    const std::int64_t many = stepsFor(400);
    EXPECT_GT(few, 1000) << "the steps are counted";
    EXPECT_LT(many, 9 * few) << "eight times the devices: " << few << ", " << many;
}

TEST(TrustAtScale, TheListSaysOfEachDeviceWhatIsSaidOfItAlone)
{
    support::Fleet fleet(3);
    fleet.exchangeAll();
    admitMany(fleet, 12);
    Cellar& desk = fleet.cellar(0);
    ASSERT_TRUE(cutOff(desk, {.device = deviceNo(3)}));
    ASSERT_TRUE(cutOff(desk, {.device = fleet.cellar(2).ledger().device()}));
    const auto devices = devicesOf(desk.database());
    ASSERT_TRUE(devices);
    ASSERT_EQ(devices->rows.size(), 15U);
    int own = 0;
    int cut = 0;
    for (const DeviceRow& row : devices->rows) {
        EXPECT_EQ(row.membership, *ledger::membershipOf(desk.database(), row.device)) << row.name;
        own += row.own ? 1 : 0;
        cut += row.membership.cutOff ? 1 : 0;
    }
    EXPECT_EQ(own, 1);
    EXPECT_EQ(cut, 2);
    EXPECT_TRUE(devices->ownStands.mayAdmit);
    EXPECT_EQ(devices->admitters().size(), 1U);
    EXPECT_EQ(devices->find(deviceNo(3))->name, "Phone 3");
    EXPECT_EQ(devices->find(deviceNo(99)), nullptr);
    // "Phone 2" before "Phone 12".
    const auto place = [&](int number) { return devices->find(deviceNo(number)); };
    EXPECT_LT(place(2), place(12));
}

TEST(TrustAtScale, ManyRecordsAreAdoptedInPartsAndCanBeStopped)
{
    support::Fleet fleet(2);
    fleet.exchangeAll();
    const DeviceId lost = fleet.cellar(1).ledger().device();
    ASSERT_TRUE(cutOff(fleet.cellar(0), {.device = lost}));
    constexpr std::uint64_t records = 450;
    for (std::uint64_t i = 0; i < records; ++i) {
        ASSERT_TRUE(recordDraw(
            fleet.cellar(1),
            {.barrel = fleet.small().barrel, .volume = millilitres(10), .method = "sample hole"}));
    }
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    Cellar& desk = fleet.cellar(0);
    ASSERT_EQ(*countSetAside(desk.database(), lost), records);
    EXPECT_EQ(setAsideOf(desk.database(), lost, 5)->size(), 5U);

    CancelToken stop;
    std::vector<std::uint64_t> reported;
    const Job job(
        [&](std::uint64_t done, std::uint64_t all) {
            EXPECT_EQ(all, records);
            reported.push_back(done);
            stop.cancel();
        },
        &stop);
    const auto stopped = adoptAll(desk, lost, {}, job);
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, ErrorCode::Cancelled);
    ASSERT_EQ(reported.size(), 1U);
    EXPECT_EQ(*countSetAside(desk.database(), lost), records - reported.front())
        << "what was adopted counts";
    EXPECT_EQ(support::problemsOf(desk), "");

    const auto rest = adoptAll(desk, lost);
    ASSERT_TRUE(rest);
    EXPECT_EQ(*rest, records - reported.front());
    EXPECT_EQ(*countSetAside(desk.database(), lost), 0U);
    EXPECT_EQ(*adoptAll(desk, lost), 0U) << "there is nothing more";
    EXPECT_EQ(support::problemsOf(desk), "");
}

}  // namespace spile::cellar
