// What corrections do to what the queries say.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

ledger::Fields volumeMl(std::int64_t ml)
{
    return {{static_cast<std::uint32_t>(Field::VolumeMl), ml}};
}
ledger::Fields note(const std::string& text)
{
    return {{static_cast<std::uint32_t>(Field::Note), text}};
}

// A desk and an admitted phone that both know of one draw of 1 L from a barrel of 190 L.
class Corrections : public testing::Test {
protected:
    support::Fleet fleet{2};
    Cellar& desk = fleet.cellar(0);
    Cellar& phone = fleet.cellar(1);
    SubjectId barrel = fleet.small().barrel;
    EntryId draw;

    void SetUp() override
    {
        draw = *recordDraw(desk, {.barrel = barrel, .volume = litres(1), .method = "valve"});
        fleet.exchangeAll();
        pass();
    }

    void pass()
    {
        fleet.at(0).clock.pass(std::chrono::hours(1));
        fleet.at(1).clock.pass(std::chrono::hours(1));
    }
    DrawRow drawRow(Cellar& cellar) { return historyOf(cellar.database(), barrel)->draws.at(0); }
    std::size_t draws(Cellar& cellar) { return historyOf(cellar.database(), barrel)->draws.size(); }
    double held(Cellar& cellar)
    {
        return inLitres(*barrelsWithCode(cellar.database(), fleet.small().code)->front().volume);
    }
    // Both must say the same, whatever came first.
    void expectDrawn(double litresDrawn, bool twoValues)
    {
        for (Cellar* cellar : {&desk, &phone}) {
            const DrawRow row = drawRow(*cellar);
            EXPECT_NEAR(inLitres(row.volume), litresDrawn, 1e-9);
            EXPECT_EQ(row.twoValues, twoValues);
            EXPECT_NEAR(held(*cellar), 190 - litresDrawn, 1e-9);
        }
    }
};

}  // namespace

TEST_F(Corrections, ChangeWhatTheRecordAndTheBarrelSay)
{
    EXPECT_FALSE(drawRow(desk).amended);
    EXPECT_NEAR(held(desk), 189, 1e-9);
    ASSERT_TRUE(amend(desk, draw, volumeMl(3000)));
    EXPECT_TRUE(drawRow(desk).amended);
    EXPECT_FALSE(drawRow(desk).twoValues);
    EXPECT_NEAR(inLitres(drawRow(desk).volume), 3, 1e-9);
    EXPECT_NEAR(held(desk), 187, 1e-9);
    ASSERT_TRUE(amend(desk, draw, note("spilt half")));  // another field, the volume stays
    EXPECT_EQ(drawRow(desk).note, "spilt half");
    EXPECT_NEAR(inLitres(drawRow(desk).volume), 3, 1e-9);
    ASSERT_TRUE(amend(desk, draw, {{static_cast<std::uint32_t>(Field::Note), ledger::Value()}}));
    EXPECT_EQ(drawRow(desk).note, "");
}

TEST_F(Corrections, ThatVoidARecordTakeItOutUntilTheVoidIsVoided)
{
    const EntryId first = *voidEntry(desk, draw);
    EXPECT_EQ(draws(desk), 0U);
    EXPECT_NEAR(held(desk), 190, 1e-9);
    const EntryId second = *voidEntry(desk, first);
    EXPECT_EQ(draws(desk), 1U);
    EXPECT_NEAR(held(desk), 189, 1e-9);
    ASSERT_TRUE(voidEntry(desk, second));  // and so on
    EXPECT_EQ(draws(desk), 0U);
    ASSERT_TRUE(voidEntry(phone, draw));
    fleet.exchangeAll();
    EXPECT_EQ(draws(desk), 0U);
    EXPECT_EQ(draws(phone), 0U);
}

TEST_F(Corrections, ThatAreVoidedLeaveTheRecordAsItWas)
{
    const EntryId wrong = *amend(desk, draw, volumeMl(3000));
    ASSERT_TRUE(voidEntry(desk, wrong));
    EXPECT_NEAR(inLitres(drawRow(desk).volume), 1, 1e-9);
    EXPECT_FALSE(drawRow(desk).amended);
    EXPECT_NEAR(held(desk), 189, 1e-9);
}

TEST_F(Corrections, OfAVoidedRecordShowWhenItCountsAgain)
{
    const EntryId gone = *voidEntry(desk, draw);
    ASSERT_TRUE(amend(desk, draw, volumeMl(2000)));
    EXPECT_EQ(draws(desk), 0U);
    ASSERT_TRUE(voidEntry(desk, gone));
    EXPECT_NEAR(inLitres(drawRow(desk).volume), 2, 1e-9);
}

TEST_F(Corrections, MadeOneAfterTheOtherAreNoConflict)
{
    ASSERT_TRUE(amend(desk, draw, volumeMl(2000)));
    fleet.exchangeAll();
    pass();
    ASSERT_TRUE(amend(phone, draw, volumeMl(4000)));
    fleet.exchangeAll();
    expectDrawn(4, false);
}

TEST_F(Corrections, ReplaceWhatTheyKnewOfThroughOthersBetween)
{
    ASSERT_TRUE(amend(desk, draw, volumeMl(2000)));
    ASSERT_TRUE(amend(desk, draw, note("of another field")));
    ASSERT_TRUE(amend(desk, draw, volumeMl(4000)));
    fleet.exchangeAll();
    expectDrawn(4, false);
}

TEST_F(Corrections, MadeAtOnceAreShownAsTwoValuesWithTheLaterInFront)
{
    ASSERT_TRUE(amend(phone, draw, volumeMl(4000)));
    pass();
    ASSERT_TRUE(amend(desk, draw, volumeMl(2000)));
    fleet.exchangeAll();
    expectDrawn(2, true);
    pass();
    ASSERT_TRUE(amend(phone, draw, volumeMl(5000)));  // settles it, since it saw both
    fleet.exchangeAll();
    expectDrawn(5, false);
}

TEST_F(Corrections, MadeAtOnceThatAgreeAreNoConflict)
{
    ASSERT_TRUE(amend(phone, draw, volumeMl(4000)));
    ASSERT_TRUE(amend(desk, draw, volumeMl(4000)));
    fleet.exchangeAll();
    expectDrawn(4, false);
}

TEST_F(Corrections, MadeAtTheSameMillisecondAreOrderedByTheirDevice)
{
    ASSERT_EQ(fleet.at(0).clock.now(), fleet.at(1).clock.now());
    ASSERT_TRUE(amend(desk, draw, volumeMl(2000)));
    ASSERT_TRUE(amend(phone, draw, volumeMl(4000)));
    fleet.exchangeAll();
    const bool deskIsLater = desk.ledger().device() > phone.ledger().device();
    expectDrawn(deskIsLater ? 2 : 4, true);
}

TEST_F(Corrections, FromAClockTwoYearsAheadDoNotOutliveTheirSuccessor)
{
    fleet.at(1).clock.setWall(fleet.at(1).clock.now() + std::chrono::days(730));
    ASSERT_TRUE(amend(phone, draw, volumeMl(4000)));
    fleet.exchangeAll();
    ASSERT_TRUE(amend(desk, draw, volumeMl(2000)));  // knows of it, so it stands, clock or not
    fleet.exchangeAll();
    expectDrawn(2, false);
}

TEST_F(Corrections, DatedInTheFutureDoNotWinByIt)
{
    auto change = *phone.ledger().change();
    ledger::NewEntry dated{"amend", barrel, volumeMl(4000), {}, {}, draw, {}};
    dated.at = ledger::EventTime{fleet.at(1).clock.now() + std::chrono::days(3650)};
    ASSERT_TRUE(change.record(dated));
    ASSERT_TRUE(change.commit());
    pass();
    ASSERT_TRUE(amend(desk, draw, volumeMl(2000)));  // at once, but really later
    fleet.exchangeAll();
    expectDrawn(2, true);
}

TEST_F(Corrections, ThatComeBeforeTheirRecordWaitForIt)
{
    // The phone hands out its amendment of a record that the third device does not have yet.
    support::Fleet three(3);
    three.exchangeAll();
    const EntryId made = *recordDraw(
        three.cellar(1), {.barrel = three.small().barrel, .volume = litres(1), .method = "valve"});
    three.takeIn(0, three.handOut(1, 0));
    ASSERT_TRUE(amend(three.cellar(0), made, volumeMl(7000)));
    // From the desk alone the phone's part of the file is left out, as the desk thinks it known.
    const auto draws = [&] {
        return historyOf(three.cellar(2).database(), three.small().barrel)->draws;
    };
    three.takeIn(2, three.handOut(0, std::nullopt));
    ASSERT_EQ(draws().size(), 1U);
    EXPECT_NEAR(inLitres(draws()[0].volume), 7, 1e-9);
}

TEST_F(Corrections, OfABarrelChangeItsCodeAndCanRemoveIt)
{
    const auto id =
        desk.database().first([](const ledger::Row& row) { return row.id<EntryId>(0); },
                              "SELECT id FROM entry WHERE kind = 'barrel' AND subject = ?", barrel);
    ASSERT_TRUE(amend(desk, **id, {{static_cast<std::uint32_t>(Field::Mark), "Port 1"}}));
    EXPECT_EQ(barrelsWithCode(desk.database(), fleet.small().code)->front().mark, "Port 1");
    const EntryId gone = *voidEntry(desk, **id);
    EXPECT_TRUE(barrelsWithCode(desk.database(), fleet.small().code)->empty());
    EXPECT_FALSE(recordCheck(desk, {.barrel = barrel, .finding = "dry"}));
    ASSERT_TRUE(voidEntry(desk, gone));
    EXPECT_EQ(barrelsWithCode(desk.database(), fleet.small().code)->size(), 1U);
}

}  // namespace spile::cellar
