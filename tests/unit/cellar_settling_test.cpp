// What is left for a person to decide, what can be done about it, and that it is gone once done.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/settling.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/fleet.hpp"

#include <gmock/gmock.h>

namespace spile::cellar {

namespace {

using support::Fleet;

constexpr int page = 50;

class ToSettle : public testing::Test {
protected:
    Fleet fleet{3};
    SubjectId barrel = fleet.small().barrel;

    void SetUp() override { fleet.exchangeAll(); }

    void pass(Milliseconds time)
    {
        for (std::size_t i = 0; i < fleet.size(); ++i) {
            fleet.at(i).clock.pass(time);
        }
    }
    EntryId draw(std::size_t device)
    {
        fleet.at(device).clock.pass(std::chrono::minutes(1));
        return *recordDraw(fleet.cellar(device),
                           {.barrel = barrel, .volume = millilitres(100), .method = "valve"});
    }
    Result<EntryId> amendVolume(std::size_t device, const EntryId& entry, std::int64_t ml)
    {
        return amend(fleet.cellar(device), entry,
                     {{static_cast<std::uint32_t>(Field::VolumeMl), ml}});
    }
    std::vector<UnsettledRow> rows(std::size_t device)
    {
        return *toSettle(fleet.cellar(device).database(), page);
    }
    std::vector<Choice> choices(std::size_t device, const UnsettledRow& row)
    {
        return *choicesFor(fleet.cellar(device).database(), row);
    }
    void choose(std::size_t device, const UnsettledRow& row, std::size_t which)
    {
        const auto done = settle(fleet.cellar(device), row, choices(device, row).at(which));
        ASSERT_TRUE(done) << support::textOf(done.error());
        EXPECT_EQ(settle(fleet.cellar(device), row, notOffered()).error().code,
                  ErrorCode::Conflict);
    }
    static Choice notOffered()
    {
        Choice choice;
        choice.does = Settling::Admit;
        return choice;
    }
    // The same everywhere, and each device sound.
    void expectQuiet()
    {
        fleet.exchangeUntilQuiet();
        for (std::size_t i = 0; i < fleet.size(); ++i) {
            EXPECT_TRUE(rows(i).empty()) << i;
            EXPECT_EQ(support::problemsOf(fleet.cellar(i)), "") << i;
        }
    }
};

}  // namespace

TEST_F(ToSettle, HasNothingInAQuietCellar)
{
    draw(1);
    expectQuiet();
    EXPECT_EQ(*howMuchToSettle(fleet.cellar(0).database()), 0);
}

TEST_F(ToSettle, AValueIsChosenOfTwo)
{
    const EntryId entry = draw(1);
    fleet.exchangeAll();
    ASSERT_TRUE(amendVolume(1, entry, 70));
    ASSERT_TRUE(amendVolume(2, entry, 90));
    fleet.exchangeAll();
    for (std::size_t i = 0; i < fleet.size(); ++i) {
        const auto open = rows(i);
        ASSERT_EQ(open.size(), 1U) << i;
        EXPECT_EQ(open.front().what, Unsettled::TwoValues);
        EXPECT_EQ(open.front().kind, "draw");
        EXPECT_EQ(open.front().about, "Rum 3");
        EXPECT_EQ(open.front().entry, entry);
        EXPECT_EQ(open.front().key, entry.hex().substr(0, 8));
    }
    const auto both = choices(0, rows(0).front());
    ASSERT_EQ(both.size(), 2U);
    EXPECT_EQ(both[0].deviceName, "Phone");
    const std::size_t seventy = both[0].value == ledger::Value(std::int64_t{70}) ? 0 : 1;
    EXPECT_EQ(both[1 - seventy].value, ledger::Value(std::int64_t{90}));
    choose(0, rows(0).front(), seventy);
    expectQuiet();
    EXPECT_EQ(inMillilitres(historyOf(fleet.cellar(2).database(), barrel)->draws.front().volume),
              70);
}

TEST_F(ToSettle, TheSameValueTwiceIsNoQuestion)
{
    const EntryId entry = draw(1);
    fleet.exchangeAll();
    ASSERT_TRUE(amendVolume(1, entry, 70));
    ASSERT_TRUE(amendVolume(2, entry, 70));
    expectQuiet();
}

TEST_F(ToSettle, ARecordThatWasTakenBackAndCorrectedStaysOrComesBack)
{
    for (const std::size_t which : {std::size_t{0}, std::size_t{1}}) {
        const EntryId entry = draw(1);
        fleet.exchangeAll();
        ASSERT_TRUE(voidEntry(fleet.cellar(1), entry));
        ASSERT_TRUE(amendVolume(2, entry, 90));
        fleet.exchangeAll();
        const auto open = rows(1);
        ASSERT_EQ(open.size(), 1U);
        EXPECT_EQ(open.front().what, Unsettled::VoidedAndCorrected);
        choose(1, open.front(), which);
        fleet.exchangeAll();
        EXPECT_EQ(historyOf(fleet.cellar(0).database(), barrel)->draws.size(), which);
    }
    expectQuiet();
}

TEST_F(ToSettle, ARecordCorrectedBeforeItWasTakenBackIsNoQuestion)
{
    const EntryId entry = draw(1);
    ASSERT_TRUE(amendVolume(1, entry, 90));
    ASSERT_TRUE(voidEntry(fleet.cellar(1), entry));
    expectQuiet();
}

TEST_F(ToSettle, OneOfTwoBarrelsWithOneCodeGetsAnother)
{
    const auto code = spareCodes(fleet.cellar(1), 1)->front();
    const auto one = registerBarrel(fleet.cellar(1), {.mark = "Port 1", .code = code});
    const auto two = registerBarrel(fleet.cellar(2), {.mark = "Port 2", .code = code});
    ASSERT_TRUE(one && two);
    fleet.exchangeAll();
    const auto open = rows(0);
    ASSERT_EQ(open.size(), 2U);
    EXPECT_EQ(open[0].what, Unsettled::SameCode);
    EXPECT_EQ(open[1].what, Unsettled::SameCode);
    EXPECT_NE(open[0].about, open[1].about);
    choose(0, open[1], 0);
    EXPECT_EQ(settle(fleet.cellar(0), open[1], choices(0, open[1]).front()).error().code,
              ErrorCode::Conflict)
        << "a second new code for one that is alone with its own";
    expectQuiet();
    EXPECT_EQ(barrelsWithCode(fleet.cellar(0).database(), code)->size(), 1U);
}

TEST_F(ToSettle, OneOfTwoFillsIsTakenBack)
{
    const auto empty = registerBarrel(fleet.cellar(0), {.mark = "Port 1"});
    fleet.exchangeAll();
    for (const std::size_t i : {std::size_t{1}, std::size_t{2}}) {
        ASSERT_TRUE(
            recordFill(fleet.cellar(i), {.barrel = empty->barrel,
                                         .batch = fleet.small().batch,
                                         .volume = litres(180.0 + static_cast<double>(i))}));
    }
    EXPECT_TRUE(rows(1).empty());
    fleet.exchangeAll();
    const auto open = rows(1);
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front().what, Unsettled::FilledTwice);
    EXPECT_EQ(choices(1, open.front()).size(), 2U);
    choose(1, open.front(), 0);
    expectQuiet();
}

TEST_F(ToSettle, OneOfTwoGaugesIsTakenBack)
{
    for (const std::size_t i : {std::size_t{1}, std::size_t{2}}) {
        ASSERT_TRUE(recordGauge(
            fleet.cellar(i),
            {.barrel = barrel, .volume = litres(40.0 + static_cast<double>(i)), .method = "dip"}));
        EXPECT_TRUE(rows(i).empty());
        pass(std::chrono::minutes(4));
    }
    fleet.exchangeAll();
    const auto open = rows(1);
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front().what, Unsettled::GaugedTwice);
    EXPECT_EQ(open.front().subject, barrel);
    const auto all = choices(1, open.front());
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[0].volumeMl, 41'000);
    EXPECT_EQ(all[1].volumeMl, 42'000);
    EXPECT_EQ(all[2].does, Settling::KeepBoth);
    choose(1, open.front(), 0);
    expectQuiet();
    EXPECT_EQ(historyOf(fleet.cellar(0).database(), barrel)->gauges.size(), 1U);
}

TEST_F(ToSettle, TwoLooksOfTwoPeopleAreBothKept)
{
    const auto gauge = [&](std::size_t i) {
        ASSERT_TRUE(recordGauge(fleet.cellar(i),
                                {.barrel = barrel, .volume = litres(40.0), .method = "dip"}));
        pass(std::chrono::minutes(3));
    };
    gauge(1);
    gauge(2);
    gauge(0);
    fleet.exchangeAll();
    for (int i = 0; i < 2; ++i) {  // three gauges: two pairs
        const auto open = rows(2);
        ASSERT_EQ(open.size(), 1U) << i;
        const auto all = choices(2, open.front());
        choose(2, open.front(), all.size() - 1);
    }
    expectQuiet();
    EXPECT_EQ(historyOf(fleet.cellar(0).database(), barrel)->gauges.size(), 3U);
}

TEST_F(ToSettle, GaugesOfOneDeviceOrFarApartAreNoMatter)
{
    for (int i = 0; i < 2; ++i) {
        ASSERT_TRUE(recordGauge(fleet.cellar(1),
                                {.barrel = barrel, .volume = litres(40.0), .method = "dip"}));
    }
    pass(std::chrono::minutes(11));
    ASSERT_TRUE(
        recordGauge(fleet.cellar(2), {.barrel = barrel, .volume = litres(40.0), .method = "dip"}));
    expectQuiet();
}

TEST_F(ToSettle, MoreDrawnThanThereWasIsTakenBack)
{
    ASSERT_TRUE(
        recordGauge(fleet.cellar(0), {.barrel = barrel, .volume = litres(20.0), .method = "dip"}));
    fleet.exchangeAll();
    pass(std::chrono::minutes(1));
    for (const std::size_t i : {std::size_t{1}, std::size_t{2}}) {
        ASSERT_TRUE(recordDraw(fleet.cellar(i),
                               {.barrel = barrel, .volume = litres(15.0), .method = "valve"}));
        EXPECT_TRUE(rows(i).empty());
    }
    fleet.exchangeAll();
    const auto open = rows(0);
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front().what, Unsettled::Overdrawn);
    EXPECT_EQ(choices(0, open.front()).front().volumeMl, 15'000);
    EXPECT_EQ((*barrelById(fleet.cellar(0).database(), barrel))->volume, litres(0.0));
    choose(0, open.front(), 0);
    expectQuiet();
    EXPECT_EQ((*barrelById(fleet.cellar(0).database(), barrel))->volume, litres(5.0));
}

TEST_F(ToSettle, MoreThanABarrelHoldsIsTakenBack)
{
    const auto made = registerBarrel(fleet.cellar(0), {.mark = "Port 2", .size = litres(100.0)});
    ASSERT_TRUE(made);
    ASSERT_TRUE(recordFill(
        fleet.cellar(0),
        {.barrel = made->barrel, .batch = fleet.small().batch, .volume = litres(110.0)}));
    EXPECT_TRUE(rows(0).empty()) << "a barrel holds a little more than it is sold as";
    ASSERT_TRUE(recordGauge(fleet.cellar(0),
                            {.barrel = made->barrel, .volume = litres(111.0), .method = "dip"}));
    const auto open = rows(0);
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front().what, Unsettled::Overfull);
    EXPECT_EQ(choices(0, open.front()).front().kind, "gauge");
    choose(0, open.front(), 0);
    expectQuiet();
}

TEST_F(ToSettle, ADeviceThatWaitsIsAdmitted)
{
    Fleet other(2);
    ASSERT_TRUE(recordDraw(
        other.cellar(1),
        {.barrel = other.small().barrel, .volume = millilitres(100), .method = "valve"}));
    other.takeIn(0, other.handOut(1, std::nullopt));
    const auto open = *toSettle(other.cellar(0).database(), page);
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front().what, Unsettled::Waiting);
    EXPECT_EQ(open.front().count, 1U);
    const auto choice = choicesFor(other.cellar(0).database(), open.front())->front();
    EXPECT_EQ(settle(other.cellar(0), open.front(), choice, {}, "").error().code,
              ErrorCode::OutOfRange);
    ASSERT_TRUE(settle(other.cellar(0), open.front(), choice, {}, "Kim's phone"));
    EXPECT_TRUE(toSettle(other.cellar(0).database(), page)->empty());
    EXPECT_EQ(historyOf(other.cellar(0).database(), other.small().barrel)->draws.size(), 1U);
}

TEST_F(ToSettle, ACopiedDevicesOldKeyIsCutOff)
{
    fleet.backUp(1);
    draw(1);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    ASSERT_TRUE(fleet.restore(1));
    draw(1);
    fleet.exchangeUntilQuiet();
    const auto open = rows(0);
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front().what, Unsettled::Copied);
    EXPECT_EQ(open.front().deviceName, "Phone");
    choose(0, open.front(), 0);
    EXPECT_EQ(historyOf(fleet.cellar(0).database(), barrel)->draws.size(), 2U)
        << "both branches are kept";
    expectQuiet();
}

TEST_F(ToSettle, WhatIsSetAsideIsAdoptedOneOrAll)
{
    ASSERT_TRUE(cutOff(fleet.cellar(0), {.device = fleet.cellar(1).ledger().device()}));
    const Instant begun = fleet.at(1).clock.now();
    for (int i = 0; i < 3; ++i) {
        draw(1);
    }
    fleet.exchangeUntilQuiet();
    const auto open = rows(0);
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front().what, Unsettled::SetAside);
    EXPECT_EQ(open.front().count, 3U);
    EXPECT_EQ(open.front().deviceName, "Phone");
    ASSERT_EQ(choices(0, open.front()).size(), 3U);
    EXPECT_EQ(choices(0, open.front()).front().kind, "draw");
    EXPECT_GT(choices(0, open.front()).front().at, begun)
        << "a person is told when it was recorded";
    choose(0, open.front(), 0);
    EXPECT_EQ(*adoptAll(fleet.cellar(0), open.front().device), 2U);
    EXPECT_EQ(historyOf(fleet.cellar(0).database(), barrel)->draws.size(), 3U);
    expectQuiet();
}

}  // namespace spile::cellar
