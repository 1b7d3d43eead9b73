// Thousands of records of a device that was cut off are adopted, one record for each.
#include "core/cellar/acts/settling.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/set_aside.hpp"
#include "tests/support/fleet.hpp"
#include "tests/support/sqlite_steps.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

ledger::NewEntry finding(const SubjectId& barrel)
{
    ledger::NewEntry entry{"check", barrel, {}, {}, {}, {}, {}};
    entry.fields = {{static_cast<std::uint32_t>(Field::Finding), std::string("dry")},
                    {static_cast<std::uint32_t>(Field::Sound), true}};
    return entry;
}

// The desk cuts the phone off, which then records so much; the desk has it, set aside.
DeviceId recordAfterACut(support::Fleet& fleet, int records)
{
    fleet.exchangeAll();
    const DeviceId lost = fleet.cellar(1).ledger().device();
    EXPECT_TRUE(cutOff(fleet.cellar(0), {.device = lost}));
    auto change = fleet.cellar(1).ledger().change();
    for (int i = 0; i < records; ++i) {
        EXPECT_TRUE(change->record(finding(fleet.small().barrel)));
    }
    EXPECT_TRUE(change->commit());
    fleet.takeIn(0, fleet.handOut(1, {}));
    EXPECT_EQ(*countSetAside(fleet.cellar(0).database(), lost),
              static_cast<std::uint64_t>(records));
    return lost;
}

}  // namespace

TEST(AdoptingAtScale, TakesWorkByTheNumberOfRecords)
{
    const support::SqliteSteps steps;
    const auto stepsFor = [](int records) {
        support::Fleet fleet(2);
        const DeviceId lost = recordAfterACut(fleet, records);
        return support::SqliteSteps::of([&] {
            const auto adopted = adoptAll(fleet.cellar(0), lost, {}, Job());
            ASSERT_TRUE(adopted);
            EXPECT_EQ(*adopted, static_cast<std::uint64_t>(records));
        });
    };
    const std::int64_t few = stepsFor(4000);
    const std::int64_t many = stepsFor(12'000);
    EXPECT_GT(few, 100'000) << "the steps are counted";
    EXPECT_LT(many, 4 * few) << "three times the records: " << few << ", " << many;
}

TEST(AdoptingAtScale, ComesToTheSameStateInWhateverOrder)
{
    support::Fleet fleet(4);
    fleet.exchangeAll();
    const DeviceId lost = recordAfterACut(fleet, 700);
    const Path records = fleet.handOut(1, {});
    const Path cut = fleet.handOut(0, {});
    ASSERT_TRUE(adoptAll(fleet.cellar(0), lost));
    const Path adopted = fleet.handOut(0, {});
    for (const Path& file : {records, cut, adopted}) {
        fleet.takeIn(2, file);
    }
    for (const Path& file : {adopted, cut, records}) {
        fleet.takeIn(3, file);
    }
    const Sha256 root = *stateRoot(fleet.cellar(0));
    for (const std::size_t other : {2U, 3U}) {
        EXPECT_EQ(*stateRoot(fleet.cellar(other)), root);
        EXPECT_EQ(*countSetAside(fleet.cellar(other).database(), lost), 0U);
        EXPECT_EQ(support::problemsOf(fleet.cellar(other)), "");
    }
}

}  // namespace spile::cellar
