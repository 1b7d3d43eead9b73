#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/fleet.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::cellar {

using support::textOf;

namespace {

ledger::Entry coreOf(Cellar& cellar, const EntryId& id)
{
    const auto found = cellar.database().first(
        [](const ledger::Row& row) { return ledger::decodeCore(row.blob(0)); },
        "SELECT core FROM entry WHERE id = ?", id);
    return ***found;
}

class Append : public testing::Test {
protected:
    support::TestDevice device{95};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);

    EntryId record() { return *recordCheck(*cellar, {.barrel = small.barrel, .finding = "dry"}); }
    ledger::Entry recorded() { return coreOf(*cellar, record()); }
};

}  // namespace

TEST_F(Append, NumbersAndLinksTheEntriesOfADevice)
{
    const EntryId first = record();
    const EntryId second = record();
    const ledger::Entry one = coreOf(*cellar, first);
    const ledger::Entry two = coreOf(*cellar, second);
    EXPECT_EQ(two.seq, one.seq + 1);
    EXPECT_EQ(two.previous, first);
    EXPECT_EQ(two.device, cellar->ledger().device());
    EXPECT_EQ(two.cellar, cellar->identity().id);
}

TEST_F(Append, NeverGoesBackInRecordedTimeWhenTheClockIsSetBack)
{
    const ledger::Entry before = recorded();
    const Instant back = before.recorded - std::chrono::days(365);
    device.clock.setWall(back);
    const ledger::Entry after = recorded();
    EXPECT_EQ(after.recorded, before.recorded);
    EXPECT_EQ(after.wall, back);  // what the clock said is kept beside it
    cellar.reset();
    cellar = device.reopen();
    const ledger::Entry reopened = recorded();
    EXPECT_EQ(reopened.recorded, before.recorded);
    EXPECT_EQ(reopened.wall, back);
    device.clock.setWall(before.recorded + std::chrono::hours(1));
    const ledger::Entry right = recorded();
    EXPECT_EQ(right.recorded, before.recorded + std::chrono::hours(1));
    EXPECT_EQ(right.wall, std::nullopt);
}

TEST_F(Append, KeepsTheBootClockThroughAJumpOfTheWallClock)
{
    const BootId boot({1, 2, 3, 4, 5, 6, 7, 8});
    device.clock.reboot(boot);
    const ledger::Entry before = recorded();
    device.clock.pass(std::chrono::minutes(10));
    device.clock.setWall(*fromIso("1970-01-01"));
    const ledger::Entry after = recorded();
    EXPECT_EQ(before.boot, boot);
    EXPECT_EQ(after.boot, boot);
    EXPECT_EQ(after.sinceBoot - before.sinceBoot, std::chrono::minutes(10));
    device.clock.reboot(BootId({9}));
    EXPECT_NE(recorded().boot, boot);
}

TEST_F(Append, RecordsNothingWithoutACommit)
{
    const std::int64_t before = support::entryCount(*cellar);
    const Sha256 root = *stateRoot(*cellar);
    {
        auto change = *cellar->ledger().change();
        ASSERT_TRUE(change.record({"person", device.ids.next(), {{1U, "Kim"}}, {}, {}, {}, {}}));
    }
    EXPECT_EQ(support::entryCount(*cellar), before);
    EXPECT_EQ(*stateRoot(*cellar), root);
    record();  // and the chain goes on where it was
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Append, RefusesABodyOverTheLimit)
{
    auto change = *cellar->ledger().change();
    const auto done = change.record({"person",
                                     device.ids.next(),
                                     {{5U, std::string(ledger::bodyBytesMax, 'n')}},
                                     {},
                                     {},
                                     {},
                                     {}});
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::TooLarge);
}

TEST_F(Append, LetsNobodyChangeOrDeleteAnEntry)
{
    EXPECT_FALSE(cellar->database().run("UPDATE entry SET kind = 'x'"));
    EXPECT_FALSE(cellar->database().run("DELETE FROM entry"));
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Append, RefusesASecondOpenerByName)
{
    const auto second = Cellar::open(device.cellarFolder(), device.outside());
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code, ErrorCode::Locked);
    EXPECT_EQ(second.error().value, "spile");
    EXPECT_NE(second.error().limit.find("process "), std::string::npos) << textOf(second.error());
    cellar.reset();
    EXPECT_TRUE(Cellar::open(device.cellarFolder(), device.outside()));
}

TEST_F(Append, RefusesToOpenWithAnotherDevicesKey)
{
    cellar.reset();
    support::TestDevice other(96);
    Outside swapped{device.clock, device.files, device.random, device.ids, other.keys};
    ASSERT_TRUE(other.keys.save(KeyName::Device, KeySeed({1})));
    const auto wrong = Cellar::open(device.cellarFolder(), swapped);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().code, ErrorCode::Conflict);
    EXPECT_EQ(wrong.error().subject, "device.key");
    EXPECT_FALSE(wrong.error().limit.empty());
    EXPECT_TRUE(Cellar::open(device.cellarFolder(), device.outside()));
}

TEST_F(Append, RefusesToMakeACellarWhereThereIsOne)
{
    cellar.reset();
    const Sha256 before = support::storedBytes(device.cellarFolder());
    const auto again =
        Cellar::create(device.cellarFolder(), device.outside(), {"Other", "7K2Q", "Desk"});
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::Conflict);
    EXPECT_EQ(support::storedBytes(device.cellarFolder()), before);
}

namespace {

// A desk, a phone with a newer version, and a third device between which records travel.
class NewerRecords : public testing::Test {
protected:
    support::Fleet fleet{3};
    Cellar& desk = fleet.cellar(0);
    Cellar& phone = fleet.cellar(1);
    SubjectId barrel = fleet.small().barrel;

    void SetUp() override { fleet.exchangeAll(); }

    std::uint64_t unknown(Cellar& cellar) { return check(cellar, {})->unknown; }

    // The phone's last record becomes one of version `version`, signed by the phone.
    Path withLastRecordOfVersion(std::uint32_t version)
    {
        const Path file = fleet.handOut(1, 0);
        support::DayFile day(file);
        const ledger::SigningKey key(**fleet.at(1).keys.load(KeyName::Device));
        auto entries = day.entries();
        auto header = day.header();
        auto core = *ledger::decodeCore(entries.back().core);
        core.kindVersion = version;
        entries.back() = ledger::signEntry(core, entries.back().body, key);
        header.ranges.back().end = entries.back().id();
        day.setEntries(entries);
        day.setHeader(header);
        day.seal(key);
        day.write(file);
        return file;
    }
};

}  // namespace

TEST_F(NewerRecords, OfAnUnknownKindAreKeptCountedAndPassedOnByteForByte)
{
    auto change = *phone.ledger().change();
    ASSERT_TRUE(change.record({"barrel.sing",
                               barrel,
                               {{900U, "la"}, {901U, ledger::List{std::int64_t{1}}}},
                               {},
                               {},
                               {},
                               {}}));
    ASSERT_TRUE(change.commit());
    EXPECT_EQ(fleet.takeIn(0, fleet.handOut(1, 0)).added, 1U);
    EXPECT_EQ(unknown(desk), 1U);
    EXPECT_EQ(fleet.takeIn(2, fleet.handOut(0, 2)).added, 1U);  // not from its author
    EXPECT_EQ(unknown(fleet.cellar(2)), 1U);
    EXPECT_EQ(support::recordBytes(fleet.cellar(2)), support::recordBytes(phone));
    EXPECT_EQ(support::problemsOf(fleet.cellar(2)), "");
    EXPECT_TRUE(recordCheck(desk, {.barrel = barrel, .finding = "dry"}));  // and nothing is blocked
}

TEST_F(NewerRecords, OfANewerVersionOfAKnownKindAreCountedAndSayNothing)
{
    ASSERT_TRUE(recordDraw(phone, {.barrel = barrel, .volume = litres(1), .method = "valve"}));
    EXPECT_EQ(fleet.takeIn(0, withLastRecordOfVersion(2)).added, 1U);
    EXPECT_EQ(unknown(desk), 1U);
    EXPECT_TRUE(historyOf(desk.database(), barrel)->draws.empty());
    EXPECT_EQ(support::problemsOf(desk), "");
}

TEST_F(NewerRecords, ThatCorrectInANewerWayAreCountedAndCorrectNothing)
{
    const EntryId draw =
        *recordDraw(desk, {.barrel = barrel, .volume = litres(1), .method = "valve"});
    fleet.takeIn(1, fleet.handOut(0, 1));
    ASSERT_TRUE(voidEntry(phone, draw));
    EXPECT_EQ(fleet.takeIn(0, withLastRecordOfVersion(2)).added, 1U);
    EXPECT_EQ(unknown(desk), 1U);
    EXPECT_EQ(historyOf(desk.database(), barrel)->draws.size(), 1U);
    EXPECT_EQ(support::problemsOf(desk), "");
}

TEST_F(NewerRecords, OfVersionOneAreTakenForWhatTheyAre)
{
    // The proof of the two above.
    ASSERT_TRUE(recordDraw(phone, {.barrel = barrel, .volume = litres(1), .method = "valve"}));
    EXPECT_EQ(fleet.takeIn(0, withLastRecordOfVersion(1)).added, 1U);
    EXPECT_EQ(unknown(desk), 0U);
    EXPECT_EQ(historyOf(desk.database(), barrel)->draws.size(), 1U);
}

TEST(TwoDesks, ThatAdmitOnePhoneGiveItOneLineInTheHistory)
{
    support::Fleet fleet(3);
    support::admitDevice(fleet.cellar(0), fleet.cellar(1), ledger::DeviceRole::Desk);
    fleet.takeIn(1, fleet.handOut(0, 1));
    support::admitDevice(fleet.cellar(0), fleet.cellar(2));  // both, without knowing of each other
    support::admitDevice(fleet.cellar(1), fleet.cellar(2));
    ASSERT_TRUE(recordDraw(
        fleet.cellar(2), {.barrel = fleet.small().barrel, .volume = litres(1), .method = "valve"}));
    fleet.exchangeAll();
    const auto history = historyOf(fleet.cellar(0).database(), fleet.small().barrel);
    ASSERT_TRUE(history);
    EXPECT_EQ(history->draws.size(), 1U);
    const auto devices = named(fleet.cellar(0).database(), "device", {}, 10);
    ASSERT_TRUE(devices);
    EXPECT_EQ(devices->size(), 3U);
}

namespace {

// The ids of all draws that the history of the fleet's barrel shows, sorted.
std::vector<EntryId> drawsOn(support::Fleet& fleet, std::size_t device)
{
    const auto history = historyOf(fleet.cellar(device).database(), fleet.small().barrel);
    std::vector<EntryId> ids;
    for (const DrawRow& row : history->draws) {
        ids.push_back(row.entry);
    }
    std::sort(ids.begin(), ids.end());
    return ids;
}

EntryId drawOn(support::Fleet& fleet, std::size_t device)
{
    fleet.at(device).clock.pass(Milliseconds(1));
    return *recordDraw(
        fleet.cellar(device),
        {.barrel = fleet.small().barrel, .volume = millilitres(100), .method = "valve"});
}

}  // namespace

TEST(RestoredDevice, ThatGoesOnFromItsBackupLosesNoRecordOfEitherBranch)
{
    support::Fleet fleet(3);
    fleet.exchangeAll();
    std::vector<EntryId> made = {drawOn(fleet, 1)};  // where the branches part
    fleet.backUp(1);
    made.push_back(drawOn(fleet, 1));
    made.push_back(drawOn(fleet, 1));
    fleet.takeIn(0, fleet.handOut(1, 0));
    ASSERT_TRUE(fleet.restore(1));
    made.push_back(drawOn(fleet, 1));  // with the same number in the chain as the second
    made.push_back(drawOn(fleet, 1));
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    fleet.takeIn(2, fleet.handOut(0, 2));  // both branches come from a third party
    fleet.exchangeUntilQuiet();
    std::sort(made.begin(), made.end());
    for (std::size_t i = 0; i < fleet.size(); ++i) {
        SCOPED_TRACE(i);
        EXPECT_EQ(drawsOn(fleet, i), made);
        EXPECT_EQ(*stateRoot(fleet.cellar(i)), *stateRoot(fleet.cellar(0)));
        EXPECT_EQ(support::recordBytes(fleet.cellar(i)), support::recordBytes(fleet.cellar(0)));
        EXPECT_EQ(support::problemsOf(fleet.cellar(i)), "");
    }
}

TEST(GapInAChain, IsWaitedForAndClosesByItself)
{
    support::Fleet fleet(3);
    fleet.exchangeAll();
    const EntryId first = drawOn(fleet, 1);
    const Path before = fleet.handOut(1, 0);
    fleet.takeIn(0, before);
    fleet.takeIn(1, fleet.handOut(0, 1));  // the receipt, so that the next file begins after it
    const EntryId second = drawOn(fleet, 1);
    const Path after = fleet.handOut(1, 0);
    const auto early = fleet.takeIn(2, after);
    EXPECT_EQ(early.added, 0U);
    EXPECT_EQ(early.waiting, 1U);
    EXPECT_TRUE(drawsOn(fleet, 2).empty());
    EXPECT_EQ(fleet.takeIn(2, before).added, 2U);
    std::vector<EntryId> both = {first, second};
    std::sort(both.begin(), both.end());
    EXPECT_EQ(drawsOn(fleet, 2), both);
    EXPECT_EQ(check(fleet.cellar(2), {})->waiting, 0U);
}

}  // namespace spile::cellar
