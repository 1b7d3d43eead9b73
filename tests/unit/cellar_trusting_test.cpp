// Cutting a device off twice, and what a device says that waits with a new key.
#include "core/cellar/acts/settling.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "tests/support/fleet.hpp"

#include <gmock/gmock.h>

namespace spile::cellar {

namespace {

class Trusting : public testing::Test {
protected:
    support::Fleet fleet{2};
    Cellar& desk = fleet.cellar(0);
    DeviceId phone = fleet.cellar(1).ledger().device();

    void SetUp() override { fleet.exchangeUntilQuiet(); }

    void record(int records)
    {
        for (int i = 0; i < records; ++i) {
            auto change = fleet.cellar(1).ledger().change();
            ledger::NewEntry entry{"check", fleet.small().barrel, {}, {}, {}, {}, {}};
            entry.fields = {{static_cast<std::uint32_t>(Field::Finding), std::string("dry")},
                            {static_cast<std::uint32_t>(Field::Sound), true}};
            ASSERT_TRUE(change->record(std::move(entry)));
            ASSERT_TRUE(change->commit());
        }
        fleet.takeIn(0, fleet.handOut(1, 0));
    }
    Result<EntryId> cut(std::optional<std::uint64_t> last = {})
    {
        return cutOff(desk, {.device = phone, .lastSeq = last});
    }
    std::int64_t records() { return *desk.database().integer(-1, "SELECT count(*) FROM entry"); }
};

}  // namespace

TEST_F(Trusting, ADeviceThatIsCutOffIsNotCutOffAgain)
{
    record(3);
    ASSERT_TRUE(cut());
    const std::string since = toIsoTime(fleet.at(0).clock.now());
    fleet.at(0).clock.pass(std::chrono::hours(5));
    record(2);  // it has not heard of it
    const std::int64_t before = records();
    for (const std::optional<std::uint64_t> last :
         {std::optional<std::uint64_t>(), std::optional<std::uint64_t>(3),
          std::optional<std::uint64_t>(5)}) {
        const auto again = cut(last);
        ASSERT_FALSE(again);
        EXPECT_EQ(again.error().code, ErrorCode::Conflict);
        EXPECT_THAT(again.error().limit, testing::HasSubstr("cut off already, since " + since));
    }
    EXPECT_EQ(records(), before);
}

TEST_F(Trusting, ACutAtAnEarlierRecordIsMade)
{
    record(3);
    ASSERT_TRUE(cut());
    EXPECT_TRUE(cut(2));
    EXPECT_FALSE(cut(2));
    EXPECT_TRUE(cut(0));
    EXPECT_FALSE(cut(0));
    EXPECT_FALSE(cut());
}

TEST_F(Trusting, AfterItWasLetInAgainADeviceIsCutOffAnew)
{
    record(1);
    ASSERT_TRUE(cut());
    fleet.at(0).clock.pass(std::chrono::hours(5));
    ASSERT_TRUE(
        reinstate(desk, ledger::SigningKey(**fleet.at(0).keys.load(KeyName::Owner)), phone));
    fleet.at(0).clock.pass(std::chrono::hours(5));
    ASSERT_TRUE(cut());
    const auto again = cut();
    ASSERT_FALSE(again);
    EXPECT_THAT(again.error().limit,
                testing::HasSubstr("since " + toIsoTime(fleet.at(0).clock.now())));
}

TEST_F(Trusting, ADeviceThatWaitsWithANewKeySaysWhoItWas)
{
    const std::string name = *nameOfDevice(desk.database(), phone);
    ASSERT_FALSE(name.empty());
    fleet.backUp(1);
    record(1);
    ASSERT_TRUE(fleet.restore(1));
    fleet.takeIn(1, fleet.handOut(0, {}));
    ASSERT_NE(fleet.cellar(1).ledger().device(), phone) << "it has a new key";
    fleet.takeIn(0, fleet.handOut(1, {}));
    const auto open = toSettle(desk.database(), 10);
    ASSERT_TRUE(open);
    ASSERT_EQ(open->size(), 1U);
    EXPECT_EQ(open->front().what, Unsettled::Waiting);
    EXPECT_EQ(open->front().formerName, name);
    EXPECT_TRUE(open->front().deviceName.empty());
}

}  // namespace spile::cellar
