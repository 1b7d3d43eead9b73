// Phones that are lost, stolen, copied or set back: who is cut off, what is set aside, what counts
// again, and that every device comes to the same, in whatever order it hears of it.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

using support::Fleet;

namespace {

EntryId draw(Fleet& fleet, std::size_t device, int ml = 100)
{
    fleet.at(device).clock.pass(std::chrono::minutes(1));
    const auto made = recordDraw(
        fleet.cellar(device),
        {.barrel = fleet.small().barrel, .volume = millilitres(ml), .method = "sample hole"});
    EXPECT_TRUE(made) << support::textOf(made.error());
    return made.value_or(EntryId());
}

std::size_t draws(Fleet& fleet, std::size_t device)
{
    return historyOf(fleet.cellar(device).database(), fleet.small().barrel)->draws.size();
}

std::int64_t setAside(Fleet& fleet, std::size_t device)
{
    return *fleet.cellar(device).database().integer(-1, "SELECT count(*) FROM set_aside");
}

DeviceId idOf(Fleet& fleet, std::size_t device) { return fleet.cellar(device).ledger().device(); }

void cut(Fleet& fleet, std::size_t by, const DeviceId& device,
         std::optional<std::uint64_t> lastSeq = {})
{
    const auto done = cutOff(fleet.cellar(by),
                             {.device = device, .lastSeq = lastSeq, .reason = "left on a train"});
    ASSERT_TRUE(done) << support::textOf(done.error());
}

ledger::SigningKey ownerKey(Fleet& fleet)
{
    return ledger::SigningKey(**fleet.at(0).keys.load(KeyName::Owner));
}

void expectOneState(Fleet& fleet)
{
    const auto root = stateRoot(fleet.cellar(0));
    for (std::size_t i = 0; i < fleet.size(); ++i) {
        EXPECT_EQ(stateRoot(fleet.cellar(i)), root) << i;
        EXPECT_EQ(support::problemsOf(fleet.cellar(i)), "") << i;
    }
}

}  // namespace

TEST(Fault29_DeviceKeyStolen, WhatItForgesAfterTheCutCountsNowhere)
{
    Fleet fleet(3);
    fleet.exchangeAll();
    draw(fleet, 1);
    fleet.exchangeAll();
    cut(fleet, 0, idOf(fleet, 1));
    const EntryId forged = draw(fleet, 1, 5000);
    ASSERT_TRUE(
        voidEntry(fleet.cellar(1), *recordDraw(fleet.cellar(1), {.barrel = fleet.small().barrel,
                                                                 .volume = millilitres(1),
                                                                 .method = "valve"})));
    fleet.exchangeAll();
    fleet.exchangeAll();
    for (std::size_t i = 0; i < fleet.size(); ++i) {
        EXPECT_EQ(draws(fleet, i), 1U) << i;
        EXPECT_EQ(setAside(fleet, i), 3) << i;
        EXPECT_EQ(
            *fleet.cellar(i).database().integer(0, "SELECT 1 FROM entry WHERE id = ?", forged), 1)
            << "it is kept and handed on, " << i;
    }
    expectOneState(fleet);
}

// The thief goes back before the cut and writes another history: a fork, seen as one.
TEST(Fault29_DeviceKeyStolen, AForkBeforeTheCutIsSetAside)
{
    Fleet fleet(3);
    fleet.exchangeAll();
    fleet.backUp(1);
    const EntryId honest = draw(fleet, 1);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    cut(fleet, 0, idOf(fleet, 1));
    ASSERT_TRUE(fleet.restore(1));
    draw(fleet, 1, 5000);  // has the number of the honest one
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    EXPECT_EQ(draws(fleet, 0), 1U);
    EXPECT_EQ(historyOf(fleet.cellar(0).database(), fleet.small().barrel)->draws.front().entry,
              honest);
    EXPECT_EQ(setAside(fleet, 0), 1);
}

TEST(Fault54_CutOffPhoneKeepsRecording, ItsRecordsAreAdoptedOneByOne)
{
    Fleet fleet(3);
    fleet.exchangeAll();
    cut(fleet, 0, idOf(fleet, 1));
    const EntryId found = draw(fleet, 1);
    draw(fleet, 1);
    fleet.exchangeAll();
    fleet.exchangeAll();
    EXPECT_EQ(draws(fleet, 1), 0U) << "its own page does not show what counts nowhere";
    EXPECT_EQ(draws(fleet, 2), 0U);
    EXPECT_EQ(adopt(fleet.cellar(2), {found}).error().code, ErrorCode::Conflict) << "a phone";
    ASSERT_TRUE(adopt(fleet.cellar(0), {found}));
    fleet.exchangeAll();
    EXPECT_EQ(draws(fleet, 2), 1U);
    EXPECT_EQ(setAside(fleet, 2), 1);
    EXPECT_EQ(adopt(fleet.cellar(0), {found}).error().code, ErrorCode::NotFound);
    expectOneState(fleet);
}

TEST(Fault54_CutOffPhoneKeepsRecording, ATableThatDisagreesWithTheRecordsIsFound)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    cut(fleet, 0, idOf(fleet, 1));
    draw(fleet, 1);
    fleet.exchangeAll();
    ASSERT_EQ(setAside(fleet, 0), 1);
    ASSERT_TRUE(fleet.cellar(0).database().run("DELETE FROM set_aside"));
    EXPECT_NE(support::problemsOf(fleet.cellar(0)).find("records set aside"), std::string::npos);
}

TEST(Fault54_CutOffPhoneKeepsRecording, TheOwnerLetsItInAgain)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    cut(fleet, 0, idOf(fleet, 1));
    draw(fleet, 1);
    fleet.exchangeAll();
    EXPECT_EQ(draws(fleet, 0), 0U);
    const ledger::SigningKey stranger(KeySeed(std::array<std::uint8_t, 32>{7}));
    EXPECT_EQ(reinstate(fleet.cellar(0), stranger, idOf(fleet, 1)).error().code,
              ErrorCode::Conflict);
    ASSERT_TRUE(reinstate(fleet.cellar(0), ownerKey(fleet), idOf(fleet, 1)));
    EXPECT_EQ(draws(fleet, 0), 1U);
    EXPECT_EQ(reinstate(fleet.cellar(0), ownerKey(fleet), idOf(fleet, 1)).error().code,
              ErrorCode::Conflict);
    fleet.exchangeAll();
    draw(fleet, 1);
    fleet.exchangeAll();
    EXPECT_EQ(draws(fleet, 0), 2U);
    expectOneState(fleet);
}

TEST(Fault54_CutOffPhoneKeepsRecording, WhomItAdmittedAfterTheCutDoesNotBelong)
{
    Fleet fleet(4);
    ASSERT_TRUE(
        admit(fleet.cellar(0), joinCode(idOf(fleet, 1)), "Second desk", ledger::DeviceRole::Desk));
    fleet.takeIn(1, fleet.handOut(0, std::nullopt));
    cut(fleet, 0, idOf(fleet, 1));
    ASSERT_TRUE(
        admit(fleet.cellar(1), joinCode(idOf(fleet, 2)), "Phone", ledger::DeviceRole::Phone));
    fleet.takeIn(2, fleet.handOut(1, std::nullopt));
    const EntryId made = draw(fleet, 2);
    fleet.takeIn(1, fleet.handOut(2, std::nullopt));
    EXPECT_EQ(draws(fleet, 1), 1U) << "it has not heard of the cut";
    fleet.takeIn(1, fleet.handOut(0, std::nullopt));
    EXPECT_EQ(draws(fleet, 1), 0U);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    EXPECT_EQ(draws(fleet, 0), 0U);
    EXPECT_EQ(support::problemsOf(fleet.cellar(0)), "");
    // Admitted where it may be, it counts.
    ASSERT_TRUE(
        admit(fleet.cellar(0), joinCode(idOf(fleet, 2)), "Phone", ledger::DeviceRole::Phone));
    EXPECT_EQ(draws(fleet, 0), 1U);
    EXPECT_EQ(historyOf(fleet.cellar(0).database(), fleet.small().barrel)->draws.front().entry,
              made);
    fleet.exchangeAll();
    fleet.exchangeAll();
    expectOneState(fleet);
}

TEST(Fault54_CutOffPhoneKeepsRecording, TwoDesksThatCutEachOtherOffWaitForTheOwner)
{
    Fleet fleet(3);
    ASSERT_TRUE(
        admit(fleet.cellar(0), joinCode(idOf(fleet, 1)), "Second desk", ledger::DeviceRole::Desk));
    fleet.exchangeAll();
    const DeviceId first = idOf(fleet, 0);
    const DeviceId second = idOf(fleet, 1);
    cut(fleet, 0, second);
    cut(fleet, 1, first);
    draw(fleet, 0);
    draw(fleet, 1);
    fleet.exchangeAll();
    fleet.exchangeAll();
    for (std::size_t i = 0; i < fleet.size(); ++i) {
        EXPECT_EQ(draws(fleet, i), 0U) << i;
    }
    EXPECT_EQ(cutOff(fleet.cellar(0), {.device = idOf(fleet, 2)}).error().code,
              ErrorCode::Conflict);
    ASSERT_TRUE(reinstate(fleet.cellar(0), ownerKey(fleet), first));
    EXPECT_EQ(draws(fleet, 0), 1U);
    ASSERT_TRUE(reinstate(fleet.cellar(0), ownerKey(fleet), second));
    fleet.exchangeAll();
    EXPECT_EQ(draws(fleet, 2), 2U);
    expectOneState(fleet);
}

TEST(Fault55_CutBeforeOrAfterTheRecords, IsTheSame)
{
    Fleet fleet(4);
    fleet.exchangeAll();
    draw(fleet, 1);
    const EntryId corrected = draw(fleet, 1);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    const Path before = fleet.handOut(0, std::nullopt);
    draw(fleet, 1);
    ASSERT_TRUE(amend(fleet.cellar(1), corrected,
                      {{static_cast<std::uint32_t>(Field::VolumeMl), std::int64_t{70}}}));
    const Path after = fleet.handOut(1, std::nullopt);
    cut(fleet, 0, idOf(fleet, 1));
    const Path cutFile = fleet.handOut(0, std::nullopt);
    fleet.takeIn(2, before);
    fleet.takeIn(2, after);
    EXPECT_EQ(draws(fleet, 2), 3U);
    fleet.takeIn(2, cutFile);
    fleet.takeIn(3, cutFile);
    EXPECT_EQ(draws(fleet, 3), 2U);
    fleet.takeIn(3, after);
    for (const std::size_t i : {std::size_t{2}, std::size_t{3}}) {
        EXPECT_EQ(draws(fleet, i), 2U) << i;
        EXPECT_EQ(setAside(fleet, i), 2) << i;
        const auto rows = historyOf(fleet.cellar(i).database(), fleet.small().barrel)->draws;
        EXPECT_FALSE(rows.back().amended) << "a correction after the cut";
        EXPECT_EQ(support::problemsOf(fleet.cellar(i)), "") << i;
    }
    EXPECT_EQ(stateRoot(fleet.cellar(2)), stateRoot(fleet.cellar(3)));
}

TEST(Fault55_CutBeforeOrAfterTheRecords, AtAnEarlierRecordOrAtNone)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    draw(fleet, 1);
    draw(fleet, 1);
    fleet.exchangeAll();
    EXPECT_EQ(cutOff(fleet.cellar(0), {.device = idOf(fleet, 1), .lastSeq = 77}).error().code,
              ErrorCode::Conflict);
    cut(fleet, 0, idOf(fleet, 1), 1);
    EXPECT_EQ(draws(fleet, 0), 1U);
    cut(fleet, 0, idOf(fleet, 1), 0);
    EXPECT_EQ(draws(fleet, 0), 0U);
    fleet.exchangeAll();
    expectOneState(fleet);
}

TEST(Trust, IsNotGivenOrTakenByOthers)
{
    Fleet fleet(3);
    fleet.exchangeAll();
    EXPECT_EQ(cutOff(fleet.cellar(1), {.device = idOf(fleet, 2)}).error().code, ErrorCode::Conflict)
        << "a phone";
    EXPECT_EQ(cutOff(fleet.cellar(0), {.device = idOf(fleet, 0)}).error().code, ErrorCode::Conflict)
        << "itself";
    EXPECT_EQ(cutOff(fleet.cellar(0), {.device = DeviceId()}).error().code, ErrorCode::NotFound);
    const auto cutEntry = cutOff(fleet.cellar(0), {.device = idOf(fleet, 1)});
    EXPECT_EQ(voidEntry(fleet.cellar(0), *cutEntry).error().code, ErrorCode::Conflict);
    // A phone's own record of that kind does nothing, even if a program of another make writes it.
    auto change = fleet.cellar(2).ledger().change();
    ASSERT_TRUE(change->record(
        {ledger::cutOffKind, *SubjectId::fromBytes(idOf(fleet, 0).bytes()), {}, {}, {}, {}, {}}));
    ASSERT_TRUE(change->commit());
    fleet.exchangeAll();
    draw(fleet, 0);
    EXPECT_EQ(draws(fleet, 0), 1U);
}

TEST(Fault28_DeviceKeyLost, TheDeviceGoesOnUnderANewKey)
{
    Fleet fleet(3);
    fleet.exchangeAll();
    const EntryId kept = draw(fleet, 1);
    const DeviceId before = idOf(fleet, 1);
    fleet.backUp(1);
    fleet.at(1).keysOfBackup = support::MemoryKeyStore();
    ASSERT_TRUE(fleet.restore(1));
    EXPECT_NE(idOf(fleet, 1), before);
    EXPECT_EQ(draws(fleet, 1), 1U);
    draw(fleet, 1);
    EXPECT_EQ(draws(fleet, 1), 2U) << "it may record before it is admitted anew";
    fleet.exchangeAll();
    fleet.exchangeAll();
    EXPECT_EQ(draws(fleet, 2), 2U);
    EXPECT_EQ(*fleet.cellar(2).database().integer(0, "SELECT 1 FROM entry WHERE id = ?", kept), 1);
    expectOneState(fleet);
}

TEST(Fault26_ClonedPhone, GetsANewKeyWhenItHearsOfItself)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    const DeviceId before = idOf(fleet, 1);
    fleet.backUp(1);
    draw(fleet, 1);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    ASSERT_TRUE(fleet.restore(1));
    draw(fleet, 1, 50);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    const auto taken = fleet.takeIn(1, fleet.handOut(0, std::nullopt));
    ASSERT_TRUE(taken.renewed);
    EXPECT_EQ(taken.renewed->before, before);
    EXPECT_EQ(taken.renewed->now, idOf(fleet, 1));
    EXPECT_FALSE(taken.renewed->admitted) << "a phone has no owner's key";
    EXPECT_NE(idOf(fleet, 1), before);
    const auto again = fleet.takeIn(1, fleet.handOut(0, std::nullopt));
    EXPECT_FALSE(again.renewed) << "once is enough";
    draw(fleet, 1);
    fleet.exchangeAll();
    EXPECT_EQ(draws(fleet, 0), 3U);
    expectOneState(fleet);
}

TEST(Fault27_PhoneRestoredToLastWeek, TheOnlyDeskAdmitsItselfByTheOwnersKey)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    fleet.backUp(0);
    draw(fleet, 0);
    fleet.takeIn(1, fleet.handOut(0, std::nullopt));
    ASSERT_TRUE(fleet.restore(0));
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    const auto membership = ledger::membershipOf(fleet.cellar(0).database(), idOf(fleet, 0));
    EXPECT_TRUE(membership->admitted);
    EXPECT_TRUE(membership->mayAdmit);
    EXPECT_EQ(draws(fleet, 0), 1U);
    fleet.exchangeAll();
    expectOneState(fleet);
}

}  // namespace spile::cellar
