// What goes wrong between several devices: copies, restores, clocks, orders, the same thing done
// twice. Nothing is lost, and all come to one state.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/clocks.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

using support::Fleet;

namespace {

constexpr auto twoYears = std::chrono::days(730);

EntryId draw(Fleet& fleet, std::size_t device, int ml = 100)
{
    fleet.at(device).clock.pass(std::chrono::minutes(1));
    const auto made = recordDraw(
        fleet.cellar(device),
        {.barrel = fleet.small().barrel, .volume = millilitres(ml), .method = "sample hole"});
    EXPECT_TRUE(made) << support::textOf(made.error());
    return made.value_or(EntryId());
}

bool has(Fleet& fleet, std::size_t device, const EntryId& id)
{
    return *fleet.cellar(device).database().integer(0, "SELECT 1 FROM entry WHERE id = ?", id) == 1;
}

BarrelHistory history(Fleet& fleet, std::size_t device)
{
    return *historyOf(fleet.cellar(device).database(), fleet.small().barrel);
}

// All devices are sound and of one state.
void expectOneState(Fleet& fleet)
{
    const auto root = stateRoot(fleet.cellar(0));
    for (std::size_t i = 0; i < fleet.size(); ++i) {
        EXPECT_EQ(stateRoot(fleet.cellar(i)), root) << i;
        EXPECT_EQ(support::problemsOf(fleet.cellar(i)), "") << i;
    }
}

ledger::Fields volumeMl(std::int64_t ml)
{
    return {{static_cast<std::uint32_t>(Field::VolumeMl), ml}};
}

}  // namespace

TEST(Fault18_GapInTheOrder, WaitsAndClosesByItself)
{
    Fleet fleet(3);
    fleet.exchangeAll();
    const EntryId first = draw(fleet, 1);
    const Path early = fleet.handOut(1, 0);
    fleet.takeIn(0, early);
    fleet.takeIn(1, fleet.handOut(0, 1));  // the phone learns that the desk has it
    const EntryId second = draw(fleet, 1);
    const Path late = fleet.handOut(1, 0);  // without what the desk has
    const auto taken = fleet.takeIn(2, late);
    EXPECT_GT(taken.waiting, 0U);
    EXPECT_FALSE(has(fleet, 2, second));
    EXPECT_EQ(support::problemsOf(fleet.cellar(2)), "");
    fleet.takeIn(2, early);
    EXPECT_TRUE(has(fleet, 2, first));
    EXPECT_TRUE(has(fleet, 2, second));
    fleet.takeIn(0, late);
    EXPECT_EQ(history(fleet, 2).draws.size(), history(fleet, 0).draws.size());
}

TEST(Fault19_OldDayFileMonthsLater, UndoesNothing)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    const EntryId made = draw(fleet, 1);
    const Path old = fleet.handOut(1, std::nullopt);
    fleet.takeIn(0, old);
    ASSERT_TRUE(voidEntry(fleet.cellar(0), made));
    fleet.at(0).clock.pass(std::chrono::days(120));
    EXPECT_EQ(fleet.takeIn(0, old).added, 0U);
    EXPECT_TRUE(history(fleet, 0).draws.empty());
    fleet.exchangeAll();
    expectOneState(fleet);
}

TEST(Fault26_ClonedPhone, IsAForkAndBothBranchesAreKept)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    fleet.backUp(1);
    const EntryId ofOne = draw(fleet, 1);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    ASSERT_TRUE(fleet.restore(1));  // the other one begins where the first did
    const EntryId ofOther = draw(fleet, 1, 50);
    EXPECT_NE(ofOne, ofOther);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    EXPECT_TRUE(has(fleet, 0, ofOne));
    EXPECT_TRUE(has(fleet, 0, ofOther));
    EXPECT_EQ(history(fleet, 0).draws.size(), 2U);
    fleet.exchangeUntilQuiet();
    expectOneState(fleet);
}

TEST(Fault27_PhoneRestoredToLastWeek, GetsItsRecordsBack)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    fleet.backUp(1);
    const EntryId lost = draw(fleet, 1);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    ASSERT_TRUE(fleet.restore(1));
    EXPECT_FALSE(has(fleet, 1, lost));
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));  // which says what the phone has now
    fleet.takeIn(1, fleet.handOut(0, 1));
    EXPECT_TRUE(has(fleet, 1, lost));
    const EntryId next = draw(fleet, 1);  // goes on behind what it got back
    fleet.exchangeAll();
    EXPECT_TRUE(has(fleet, 0, next));
    EXPECT_EQ(*fleet.cellar(0).database().integer(
                  0, "SELECT max(c) FROM (SELECT count(*) AS c FROM entry GROUP BY d, seq)"),
              1);
    expectOneState(fleet);
}

TEST(Fault30_ClockTwoYearsOff, NeverDecidesWhatIsTrue)
{
    for (const auto off : {twoYears, -twoYears}) {
        Fleet fleet(2);
        fleet.exchangeAll();
        const EntryId made = draw(fleet, 0);
        fleet.exchangeAll();
        fleet.at(1).clock.setWall(fleet.at(1).clock.now() + off);
        ASSERT_TRUE(amend(fleet.cellar(1), made, volumeMl(4000)));
        fleet.exchangeAll();
        ASSERT_TRUE(amend(fleet.cellar(0), made, volumeMl(2000)));
        fleet.exchangeAll();
        EXPECT_NEAR(inLitres(history(fleet, 1).draws.at(0).volume), 2, 1e-9);
        EXPECT_FALSE(history(fleet, 1).draws.at(0).twoValues);
        expectOneState(fleet);
    }
}

TEST(Fault32_ClockAt1970, GoesOnFromTheLastRecord)
{
    Fleet fleet(1);
    draw(fleet, 0);
    const Instant before = history(fleet, 0).draws.back().at;
    fleet.at(0).clock.setWall(instantFromMs(0));
    draw(fleet, 0);
    ASSERT_EQ(history(fleet, 0).draws.size(), 2U);
    EXPECT_GE(history(fleet, 0).draws.back().at, before);
    EXPECT_EQ(clockDoubt(fleet.cellar(0).database(), fleet.at(0).clock)->behindOwn, before);
    expectOneState(fleet);
}

TEST(Fault33_RecordFromTheFuture, IsKeptAndMovesNoClock)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    fleet.at(1).clock.setWall(instantFromMs(253402300799000));
    const EntryId far = draw(fleet, 1);
    fleet.exchangeAll();
    EXPECT_TRUE(has(fleet, 0, far));
    ASSERT_EQ(history(fleet, 0).draws.size(), 1U);
    EXPECT_TRUE(isInFuture(history(fleet, 0).draws.front().at, fleet.at(0).clock.now()));
    EXPECT_TRUE(clockDoubt(fleet.cellar(0).database(), fleet.at(0).clock)->ahead);
    const EntryId now = draw(fleet, 0);
    const auto draws = history(fleet, 0).draws;
    const auto own = std::find_if(draws.begin(), draws.end(),
                                  [&](const DrawRow& row) { return row.entry == now; });
    ASSERT_NE(own, draws.end());
    EXPECT_EQ(own->at, fleet.at(0).clock.now());
    fleet.exchangeAll();
    expectOneState(fleet);
}

TEST(Fault35_TwoBarrelsOfOneCode, AreBothKept)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    const std::string code = spareCodes(fleet.cellar(0), 1)->front();
    ASSERT_TRUE(registerBarrel(fleet.cellar(0), {.mark = "Rum 4", .code = code}));
    ASSERT_TRUE(registerBarrel(fleet.cellar(1), {.mark = "Rye 9", .code = code}));
    fleet.exchangeAll();
    EXPECT_EQ(barrelsWithCode(fleet.cellar(0).database(), code)->size(), 2U);
    EXPECT_EQ(barrelsWithCode(fleet.cellar(1).database(), code)->size(), 2U);
    expectOneState(fleet);
}

TEST(Fault36_TwoFillsOfOneBarrel, AreBothFacts)
{
    Fleet fleet(2);
    const auto barrel = registerBarrel(fleet.cellar(0), {.mark = "Rum 4"})->barrel;
    fleet.exchangeAll();
    ASSERT_TRUE(recordFill(fleet.cellar(0), {.barrel = barrel, .volume = litres(180)}));
    ASSERT_TRUE(recordFill(fleet.cellar(1), {.barrel = barrel, .volume = litres(190)}));
    fleet.exchangeAll();
    EXPECT_EQ(historyOf(fleet.cellar(0).database(), barrel)->fills.size(), 2U);
    expectOneState(fleet);
}

TEST(Fault37_OneFieldOnTwoPhones, ShowsThatThereAreTwoValues)
{
    Fleet fleet(3);
    const EntryId made = draw(fleet, 0);
    fleet.exchangeAll();
    ASSERT_TRUE(amend(fleet.cellar(1), made, volumeMl(300)));
    ASSERT_TRUE(amend(fleet.cellar(2), made, volumeMl(400)));
    fleet.exchangeAll();
    EXPECT_TRUE(history(fleet, 0).draws.at(0).twoValues);
    expectOneState(fleet);
    ASSERT_TRUE(amend(fleet.cellar(0), made, volumeMl(350)));  // it is settled by one more record
    fleet.exchangeAll();
    EXPECT_FALSE(history(fleet, 2).draws.at(0).twoValues);
    expectOneState(fleet);
}

TEST(Fault38_CorrectionBeforeItsRecord, WaitsForIt)
{
    Fleet fleet(3);
    const auto code = joinCode(fleet.cellar(2).ledger().device());
    ASSERT_TRUE(admit(fleet.cellar(0), code, "Phone", ledger::DeviceRole::Phone));
    fleet.takeIn(2, fleet.handOut(0, std::nullopt));
    // The records of device 1 wait, as it is not admitted; device 2 has them and corrects one.
    const EntryId made = draw(fleet, 1);
    const Path ofOne = fleet.handOut(1, std::nullopt);
    auto change = *fleet.cellar(2).ledger().change();
    ledger::NewEntry corrects{"amend", fleet.small().barrel, volumeMl(700), {}, {}, made, {}};
    ASSERT_TRUE(change.record(corrects));
    ASSERT_TRUE(change.commit());
    fleet.takeIn(0, fleet.handOut(2, std::nullopt));
    fleet.takeIn(0, ofOne);
    EXPECT_TRUE(history(fleet, 0).draws.empty());
    fleet.exchangeAll();
    ASSERT_EQ(history(fleet, 0).draws.size(), 1U);
    EXPECT_NEAR(inLitres(history(fleet, 0).draws[0].volume), 0.7, 1e-9);
    expectOneState(fleet);
}

TEST(Fault39_VoidAndCorrectionAtOnce, IsHiddenAndTwiceVoidedIsVoided)
{
    Fleet fleet(3);
    const EntryId made = draw(fleet, 0);
    fleet.exchangeAll();
    ASSERT_TRUE(voidEntry(fleet.cellar(1), made));
    ASSERT_TRUE(amend(fleet.cellar(2), made, volumeMl(400)));
    ASSERT_TRUE(voidEntry(fleet.cellar(0), made));
    fleet.exchangeAll();
    EXPECT_TRUE(history(fleet, 0).draws.empty());
    expectOneState(fleet);
}

TEST(Fault40_LongChainOfCorrections, TakesItsTimeInLine)
{
    Fleet fleet(2);
    EntryId last = draw(fleet, 0);
    fleet.exchangeAll();
    constexpr int links = 10'000;
    {
        auto change = *fleet.cellar(0).ledger().change();
        for (int i = 0; i < links; ++i) {
            const char* kind = "void";  // of the void before it, and so on
            last = *change.record({kind, fleet.small().barrel, {}, {}, {}, last, {}});
        }
        ASSERT_TRUE(change.commit());
    }
    EXPECT_EQ(history(fleet, 0).draws.size(), links % 2 == 0 ? 1U : 0U);
    fleet.exchangeAll();
    expectOneState(fleet);
}

TEST(Fault41_PhotoThatIsMissing, BlocksNothingAndIsAskedFor)
{
    Fleet fleet(3);
    fleet.exchangeAll();
    const Bytes picture = support::smallPicture();
    const auto photo = recordPhoto(
        fleet.cellar(1), {.barrel = fleet.small().barrel, .picture = picture, .purpose = "colour"});
    ASSERT_TRUE(photo);
    // Its file is gone before the phone hands out.
    const Path file = fleet.cellar(1).ledger().photos().pathOf(photo->photo.hash);
    const Path aside = fleet.at(1).folder / "aside";
    std::filesystem::rename(file, aside);
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    EXPECT_TRUE(has(fleet, 0, photo->entry));
    EXPECT_EQ(check(fleet.cellar(0), {})->missingPhotos, 1U);
    EXPECT_EQ(support::problemsOf(fleet.cellar(0)), "");
    std::filesystem::rename(aside, file);
    fleet.takeIn(1, fleet.handOut(0, 1));  // which says what the desk lacks
    fleet.takeIn(0, fleet.handOut(1, 0));
    EXPECT_EQ(check(fleet.cellar(0), {})->missingPhotos, 0U);
}

TEST(Fault61_TwoDesks, ConvergeWhenTheyMeet)
{
    Fleet fleet(4);
    const auto second = joinCode(fleet.cellar(1).ledger().device());
    ASSERT_TRUE(admit(fleet.cellar(0), second, "Desk 2", ledger::DeviceRole::Desk));
    fleet.takeIn(1, fleet.handOut(0, std::nullopt));
    ASSERT_TRUE(admit(fleet.cellar(0), joinCode(fleet.cellar(2).ledger().device()), "A",
                      ledger::DeviceRole::Phone));
    ASSERT_TRUE(admit(fleet.cellar(1), joinCode(fleet.cellar(3).ledger().device()), "B",
                      ledger::DeviceRole::Phone));
    draw(fleet, 2);
    draw(fleet, 3);
    fleet.takeIn(0, fleet.handOut(2, std::nullopt));
    fleet.takeIn(1, fleet.handOut(3, std::nullopt));
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    fleet.takeIn(1, fleet.handOut(0, std::nullopt));
    EXPECT_EQ(stateRoot(fleet.cellar(0)), stateRoot(fleet.cellar(1)));
    EXPECT_EQ(history(fleet, 0).draws.size(), 2U);
}

TEST(Fault63_DeskThatIsGone, IsMadeAgainFromTheFilesOfPhones)
{
    Fleet fleet(2);
    fleet.exchangeAll();
    draw(fleet, 0);
    fleet.exchangeAll();
    draw(fleet, 1);
    const Path file = fleet.handOut(1, std::nullopt);
    support::TestDevice fresh(5);
    auto desk = fresh.join(file);
    EXPECT_EQ(stateRoot(*desk), stateRoot(fleet.cellar(1)));
    EXPECT_EQ(support::problemsOf(*desk), "");
}

}  // namespace spile::cellar
