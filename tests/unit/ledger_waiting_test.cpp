// Records that wait for their device to be admitted: how they come to count.
#include "core/ledger/take_in.hpp"
#include "tests/support/fleet.hpp"
#include "tests/support/sqlite_steps.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

std::int64_t waiting(Cellar& cellar)
{
    return *cellar.database().integer(-1, "SELECT count(*) FROM waiting");
}

ledger::NewEntry finding(const SubjectId& barrel)
{
    return {"check",
            barrel,
            {{static_cast<std::uint32_t>(Field::Finding), std::string("dry")},
             {static_cast<std::uint32_t>(Field::Sound), true}},
            {},
            {},
            {},
            {}};
}

// So many records of one device, by taps that made `together` of them each.
void recordMany(support::Fleet& fleet, std::size_t device, int records, int together)
{
    auto change = fleet.cellar(device).ledger().change();
    ASSERT_TRUE(change);
    for (int i = 0; i < records; i += together) {
        const std::vector<ledger::NewEntry> tap(static_cast<std::size_t>(together),
                                                finding(fleet.small().barrel));
        ASSERT_TRUE(change->recordGroup(tap));
    }
    ASSERT_TRUE(change->commit());
}

void admitPhone(support::Fleet& fleet, std::size_t desk, std::size_t phone)
{
    ASSERT_TRUE(ledger::admit(fleet.cellar(desk).ledger(), fleet.cellar(phone).ledger().device(),
                              "Phone", ledger::DeviceRole::Phone));
}

// Whether the newest record of the device that counts is the last of its tap.
bool endsWithAWholeTap(Cellar& cellar, const DeviceId& device)
{
    const auto core = cellar.database().first(
        [](const ledger::Row& row) { return ledger::decodeCore(row.blob(0)); },
        "SELECT core FROM entry JOIN device_chain USING(d) WHERE device = ? ORDER BY seq DESC "
        "LIMIT 1",
        device);
    if (!core || !*core) {
        return true;
    }
    const auto& group = (**core)->group;
    return !group || group->index + 1 == group->count;
}

}  // namespace

// Other work runs between two commits, and a process may be killed there.
TEST(Waiting, ATapCountsWholeOrNotAtAll)
{
    support::Fleet fleet(3);
    const DeviceId phone = fleet.cellar(2).ledger().device();
    ASSERT_TRUE(ledger::admit(fleet.cellar(0).ledger(), fleet.cellar(1).ledger().device(), "Desk",
                              ledger::DeviceRole::Desk));
    fleet.takeIn(1, fleet.handOut(0, {}));
    recordMany(fleet, 2, 1050, 7);
    fleet.takeIn(0, fleet.handOut(2, {}));
    ASSERT_EQ(waiting(fleet.cellar(0)), 1050);
    admitPhone(fleet, 1, 2);
    const Path file = fleet.handOut(1, {});

    int looks = 0;
    const Job job(
        [&](std::uint64_t, std::uint64_t) {
            ++looks;
            EXPECT_TRUE(endsWithAWholeTap(fleet.cellar(0), phone));
        },
        nullptr);
    ASSERT_TRUE(takeIn(fleet.cellar(0), file, job));
    EXPECT_GE(looks, 3);
    EXPECT_EQ(waiting(fleet.cellar(0)), 0);
    EXPECT_EQ(support::problemsOf(fleet.cellar(0)), "");
}

// The process was killed after the admission was saved and before what waited for it was.
TEST(Waiting, CountsAtTheNextStartWhereAnAdmissionWasInterrupted)
{
    support::TestDevice desk(91);
    support::TestDevice phone(92);
    auto cellar = desk.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    const Path file = desk.folder.path() / "day.spile";
    ASSERT_TRUE(handOut(*cellar, file, {}));
    {
        const auto other = phone.join(file);
        auto change = other->ledger().change();
        ASSERT_TRUE(change->record(finding(small.barrel)));
        ASSERT_TRUE(change->commit());
        support::carry(*other, *cellar, phone.folder.path() / "back.spile");
        ASSERT_EQ(waiting(*cellar), 1);
        ledger::NewEntry admission{ledger::deviceKind,
                                   *SubjectId::fromBytes(other->ledger().device().bytes()),
                                   {},
                                   {},
                                   {},
                                   {},
                                   {}};
        admission.fields = {{ledger::trust_field::name, std::string("Phone")},
                            {ledger::trust_field::role, std::int64_t{2}}};
        auto admitting = cellar->ledger().change();
        ASSERT_TRUE(admitting->record(std::move(admission)));
        ASSERT_TRUE(admitting->commit());
    }
    cellar.reset();
    cellar = desk.reopen();
    EXPECT_EQ(waiting(*cellar), 0);
    EXPECT_EQ(*cellar->database().integer(0, "SELECT count(*) FROM state_check"), 1);
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST(Waiting, ManyRecordsAreLinkedInOnePass)
{
    const support::SqliteSteps steps;
    const auto stepsFor = [](int records) {
        support::Fleet fleet(2);
        recordMany(fleet, 1, records, 1);
        fleet.takeIn(0, fleet.handOut(1, {}));
        const std::int64_t taken = support::SqliteSteps::of([&] { admitPhone(fleet, 0, 1); });
        EXPECT_EQ(waiting(fleet.cellar(0)), 0);
        return taken;
    };
    const std::int64_t few = stepsFor(1000);
    const std::int64_t many = stepsFor(8000);
    EXPECT_GT(few, 100'000) << "the steps are counted";
    EXPECT_LT(many, 9 * few) << "eight times the records: " << few << ", " << many;
}

// One of the two ids stands before the other, and what it waits for comes later in that order.
TEST(Waiting, AnAdmissionThatWaitedItselfLetsTheOthersCount)
{
    for (const std::size_t middle : {1U, 2U}) {
        support::Fleet fleet(4);
        const std::size_t last = 3 - middle;
        ASSERT_TRUE(ledger::admit(fleet.cellar(0).ledger(), fleet.cellar(middle).ledger().device(),
                                  "Desk", ledger::DeviceRole::Desk));
        fleet.takeIn(middle, fleet.handOut(0, {}));
        recordMany(fleet, middle, 1, 1);
        const Path first = fleet.handOut(middle, {});
        fleet.takeIn(3, first);
        fleet.takeIn(middle, fleet.handOut(3, {}));
        admitPhone(fleet, middle, last);
        const Path second = fleet.handOut(middle, 3);
        recordMany(fleet, last, 10, 1);

        fleet.takeIn(0, fleet.handOut(last, {}));
        fleet.takeIn(0, second);
        EXPECT_EQ(waiting(fleet.cellar(0)), 11) << "the admission waits too";
        fleet.takeIn(0, first);
        EXPECT_EQ(waiting(fleet.cellar(0)), 0);
        EXPECT_EQ(*fleet.cellar(0).database().integer(0, "SELECT count(*) FROM state_check"), 11);
    }
}

}  // namespace spile::cellar
