// A clock that was wrong: what is said of it sets right when its records happened, in any order of
// arrival, and can be taken back.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/observing.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/clocks.hpp"
#include "core/cellar/exporting.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/fleet.hpp"
#include "tests/support/test_device.hpp"

#include <gmock/gmock.h>

namespace spile::cellar {

namespace {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using support::Fleet;

class Clocks : public testing::Test {
protected:
    static constexpr std::size_t desk = 0, phone = 1;
    Fleet fleet{3};
    SubjectId barrel = fleet.small().barrel;

    void SetUp() override { fleet.exchangeUntilQuiet(); }

    Cellar& at(std::size_t device) { return fleet.cellar(device); }
    DeviceId id(std::size_t device) { return at(device).ledger().device(); }
    SimulatedClock& clock(std::size_t device) { return fleet.at(device).clock; }
    // Time passes everywhere.
    void pass(Milliseconds time)
    {
        for (std::size_t i = 0; i < fleet.size(); ++i) {
            clock(i).pass(time);
        }
    }
    EntryId draw(std::size_t device, const std::optional<ledger::EventTime>& said = {})
    {
        pass(minutes(10));
        const auto made = recordDraw(at(device), {.barrel = barrel,
                                                  .volume = millilitres(100),
                                                  .method = "valve",
                                                  .circumstance = {.at = said}});
        EXPECT_TRUE(made) << support::textOf(made.error());
        return made.value_or(EntryId());
    }
    DrawRow drawn(const EntryId& entry, std::size_t device = desk)
    {
        const auto draws = historyOf(at(device).database(), barrel)->draws;
        const auto found = std::find_if(draws.begin(), draws.end(),
                                        [&](const DrawRow& row) { return row.entry == entry; });
        EXPECT_NE(found, draws.end());
        return found == draws.end() ? DrawRow{} : *found;
    }
    EntryId observe(Instant shown)
    {
        const auto made = observeClock(at(desk), id(phone), shown, {clock(desk).now()});
        EXPECT_TRUE(made) << support::textOf(made.error());
        return made.value_or(EntryId());
    }
    void expectOneState()
    {
        fleet.exchangeUntilQuiet();
        const auto root = *stateRoot(at(desk));
        for (std::size_t i = 0; i < fleet.size(); ++i) {
            EXPECT_EQ(*stateRoot(at(i)), root) << i;
            EXPECT_EQ(support::problemsOf(at(i)), "") << i;
        }
    }
};

}  // namespace

TEST_F(Clocks, SeenAtTheDeskSetRightWhatThePhoneRecorded)
{
    clock(phone).setWall(clock(phone).now() + hours(5));
    const Instant truth = clock(desk).now() + minutes(10);
    const EntryId entry = draw(phone);
    fleet.exchangeUntilQuiet();
    EXPECT_EQ(drawn(entry).at, truth + hours(5));
    EXPECT_FALSE(drawn(entry).clock);
    pass(hours(3));
    observe(clock(phone).now());
    EXPECT_EQ(drawn(entry).at, truth);
    EXPECT_EQ(drawn(entry).clock, truth + hours(5));
    const EntryId later = draw(phone);
    expectOneState();
    EXPECT_EQ(drawn(later, 2).at, clock(desk).now());
}

TEST_F(Clocks, SaidOnThePhoneItselfSetRightBothSidesOfAJump)
{
    const EntryId before = draw(phone);
    const Instant truth = clock(desk).now();
    clock(phone).setWall(clock(phone).now() - days(400));
    const EntryId after = draw(phone);
    ASSERT_TRUE(observeOwnClock(at(phone), {clock(desk).now()}));
    EXPECT_EQ(drawn(before, phone).at, truth);
    EXPECT_EQ(drawn(after, phone).at, truth + minutes(10));
    EXPECT_EQ(drawn(after, phone).clock, truth + minutes(10) - days(400));
    expectOneState();
}

TEST_F(Clocks, AreSeenBesideAClockThatIsItselfKnownToBeWrong)
{
    const Instant truth = clock(2).now() + minutes(10);
    clock(phone).setWall(clock(phone).now() + hours(5));
    const EntryId entry = draw(phone);
    fleet.exchangeUntilQuiet();
    clock(desk).setWall(clock(desk).now() - days(20));
    ASSERT_TRUE(observeOwnClock(at(desk), {clock(2).now()}));
    observe(clock(phone).now());
    EXPECT_EQ(drawn(entry).at, truth);
    expectOneState();
}

TEST_F(Clocks, OfAnotherStartStayAsTheyAre)
{
    clock(phone).setWall(clock(phone).now() + days(3));
    const EntryId before = draw(phone);
    const Instant told = clock(phone).now();
    clock(phone).reboot(BootId({7}));
    const EntryId after = draw(phone);
    ASSERT_TRUE(observeOwnClock(at(phone), {clock(desk).now()}));
    EXPECT_EQ(drawn(before, phone).at, told);
    EXPECT_FALSE(drawn(before, phone).clock);
    EXPECT_EQ(drawn(after, phone).at, clock(desk).now());
    expectOneState();
}

TEST_F(Clocks, KeepAClaimedTimeAndMoveOneThatOnlyRepeatsTheClock)
{
    clock(phone).setWall(clock(phone).now() + hours(5));
    const Instant yesterday = clock(phone).now() - days(1);
    const EntryId claimed = draw(phone, ledger::EventTime{yesterday, 60});
    const EntryId repeated =
        draw(phone, ledger::EventTime{clock(phone).now() + minutes(10) - seconds(1), 60});
    ASSERT_TRUE(observeOwnClock(at(phone), {clock(desk).now()}));
    EXPECT_EQ(drawn(claimed, phone).at, yesterday);
    EXPECT_FALSE(drawn(claimed, phone).clock);
    EXPECT_EQ(drawn(repeated, phone).at, clock(desk).now());
    expectOneState();
}

TEST_F(Clocks, AreExportedBesideTheTrueTime)
{
    draw(phone);
    clock(phone).setWall(clock(phone).now() + hours(5));
    const Instant truth = clock(desk).now() + minutes(10);
    draw(phone);
    ASSERT_TRUE(observeOwnClock(at(phone), {clock(desk).now()}));
    const auto tables = exportedTables();
    const auto draws = std::find_if(tables.begin(), tables.end(), [](const ExportedTable& table) {
        return table.name == "draw";
    });
    ASSERT_NE(draws, tables.end());
    EXPECT_EQ(draws->columns[4], "at_ms");
    EXPECT_EQ(draws->columns[5], "clock_ms");
    std::vector<std::pair<Cell, Cell>> times;
    ASSERT_TRUE(eachRow(at(phone).database(), *draws, [&](std::span<const Cell> cells) {
        times.emplace_back(cells[4], cells[5]);
        return Result<void>();
    }));
    // The first draw was right, so that nothing of it was set right.
    const std::vector<std::pair<Cell, Cell>> expected = {
        {toMs(truth - minutes(10)), std::monostate()}, {toMs(truth), toMs(truth + hours(5))}};
    ASSERT_GE(times.size(), 2U);
    EXPECT_EQ(std::vector(times.end() - 2, times.end()), expected);
}

TEST_F(Clocks, BelowTheToleranceChangeNothing)
{
    for (const auto& [off, changes] :
         {std::pair(clockTolerance - Milliseconds(1), false), std::pair(clockTolerance, true)}) {
        clock(phone).setWall(clock(desk).now() + off);
        clock(phone).reboot(BootId({static_cast<std::uint8_t>(changes ? 2 : 1)}));
        const EntryId entry = draw(phone);
        ASSERT_TRUE(observeOwnClock(at(phone), {clock(desk).now()}));
        EXPECT_EQ(drawn(entry, phone).clock.has_value(), changes);
        EXPECT_EQ(drawn(entry, phone).at, clock(desk).now() + (changes ? Milliseconds(0) : off));
    }
}

TEST_F(Clocks, AreTakenBackByAVoidAndByTheVoidOfTheVoid)
{
    clock(phone).setWall(clock(phone).now() + hours(5));
    const EntryId entry = draw(phone);
    const Instant told = clock(phone).now();
    const auto observation = observeOwnClock(at(phone), {clock(desk).now()});
    const auto taken = voidEntry(at(phone), *observation);
    ASSERT_TRUE(taken);
    EXPECT_EQ(drawn(entry, phone).at, told);
    EXPECT_FALSE(drawn(entry, phone).clock);
    ASSERT_TRUE(voidEntry(at(phone), *taken));
    EXPECT_EQ(drawn(entry, phone).at, told - hours(5));
    expectOneState();
}

TEST_F(Clocks, SeenAgainCountAsTheyWereSeenLast)
{
    clock(phone).setWall(clock(phone).now() + hours(5));
    const EntryId entry = draw(phone);
    const Instant truth = clock(desk).now();
    // Mistaken, and years ahead: nothing but what was said after it takes its place.
    ASSERT_TRUE(observeOwnClock(at(phone), {truth + days(700)}));
    EXPECT_EQ(drawn(entry, phone).at, truth + days(700));
    const auto second = observeOwnClock(at(phone), {truth});
    EXPECT_EQ(drawn(entry, phone).at, truth);
    ASSERT_TRUE(voidEntry(at(phone), *second));
    EXPECT_EQ(drawn(entry, phone).at, truth + days(700));
    expectOneState();
}

TEST_F(Clocks, AreWhatTheyWereOnceTheirObservationIsSetAside)
{
    clock(phone).setWall(clock(phone).now() + hours(5));
    const EntryId entry = draw(phone);
    const Instant told = clock(phone).now();
    fleet.exchangeUntilQuiet();
    const auto last = newestRecord(at(2).database(), id(2))->value_or(ledger::Entry{}).seq;
    ASSERT_TRUE(observeClock(at(2), id(phone), clock(phone).now(), {clock(2).now()}));
    fleet.exchangeUntilQuiet();
    EXPECT_EQ(drawn(entry).at, told - hours(5));
    ASSERT_TRUE(cutOff(at(desk), {.device = id(2), .lastSeq = last}));
    EXPECT_EQ(drawn(entry).at, told);
    EXPECT_FALSE(drawn(entry).clock);
    fleet.exchangeUntilQuiet();
    EXPECT_EQ(*stateRoot(at(desk)), *stateRoot(at(phone)));
    EXPECT_EQ(support::problemsOf(at(phone)), "");
}

TEST_F(Clocks, MoveWhatTheBarrelIsKnownByToo)
{
    clock(phone).setWall(clock(phone).now() + days(300));
    draw(phone);
    ASSERT_TRUE(observeOwnClock(at(phone), {clock(desk).now()}));
    EXPECT_EQ(*at(phone).database().integer(
                  0, "SELECT last_draw_ms FROM state_barrel_now WHERE subject = ?", barrel),
              toMs(clock(desk).now()));
}

TEST_F(Clocks, CannotBeSeenWhereNothingIsKnownOfThem)
{
    const auto error = [&](const DeviceId& device, Instant shown) {
        const auto made = observeClock(at(desk), device, shown, {clock(desk).now()});
        return made ? ErrorCode::Cancelled : made.error().code;
    };
    const auto root = *stateRoot(at(desk));
    EXPECT_EQ(error(DeviceId({9}), clock(desk).now()), ErrorCode::NotFound);
    EXPECT_EQ(error(id(desk), clock(desk).now()), ErrorCode::Conflict);
    draw(phone);
    fleet.exchangeUntilQuiet();
    const auto before = *stateRoot(at(desk));
    EXPECT_EQ(error(id(phone), clock(phone).now() - minutes(1)), ErrorCode::Conflict);
    EXPECT_EQ(error(id(phone), ledger::latestTime + days(1)), ErrorCode::OutOfRange);
    EXPECT_NE(before, root);
    EXPECT_EQ(*stateRoot(at(desk)), before);
    // To the minute: the seconds were not read.
    EXPECT_TRUE(
        observeClock(at(desk), id(phone), clock(phone).now() - seconds(59), {clock(desk).now()}));
}

TEST_F(Clocks, AreDoubtedByWhatTheDeviceItselfCanKnow)
{
    const auto doubt = [&] { return *clockDoubt(at(phone).database(), clock(phone)); };
    draw(phone);
    pass(hours(30));
    EXPECT_FALSE(doubt().any());
    clock(phone).setWall(clock(phone).now() - hours(6));
    EXPECT_EQ(doubt().jumped, -hours(6));
    EXPECT_FALSE(doubt().behindOwn);
    clock(phone).setWall(instantFromMs(0));
    EXPECT_EQ(doubt().behindOwn, clock(desk).now() - hours(30));
    clock(phone).reboot(BootId({5}));
    EXPECT_FALSE(doubt().jumped);
    clock(phone).setWall(clock(desk).now());
    EXPECT_FALSE(doubt().any());
}

TEST_F(Clocks, AreDoubtedWhenAnotherDevicesRecordsComeFromTheFuture)
{
    clock(phone).setWall(clock(phone).now() + futureTolerance + minutes(1));
    draw(phone);
    fleet.exchangeUntilQuiet();
    const auto doubt = [&] { return *clockDoubt(at(desk).database(), clock(desk)); };
    ASSERT_TRUE(doubt().ahead);
    EXPECT_EQ(doubt().ahead->device, id(phone));
    EXPECT_EQ(doubt().ahead->recorded, clock(phone).now());
    observe(clock(phone).now());
    EXPECT_FALSE(doubt().any());
}

TEST_F(Clocks, AreNotDoubtedByWhatCountsNowhere)
{
    clock(phone).setWall(clock(phone).now() + days(700));
    draw(phone);
    fleet.exchangeUntilQuiet();
    ASSERT_TRUE(clockDoubt(at(desk).database(), clock(desk))->ahead);
    ASSERT_TRUE(cutOff(at(desk), {.device = id(phone), .lastSeq = 0, .reason = "lost"}));
    EXPECT_FALSE(clockDoubt(at(desk).database(), clock(desk))->any());
}

// The owner's key signs on any machine: nobody can look at its clock.
TEST(OwnersKey, HasNoClockToBeDoubted)
{
    support::TestDevice device(3);
    device.clock.pass(days(3));
    const auto cellar = device.newCellar();
    device.clock.reboot(BootId({8}));
    device.clock.setWall(device.clock.now() - days(3));
    EXPECT_FALSE(clockDoubt(cellar->database(), device.clock)->ahead);
}

TEST(TrueTime, IsCheckedAtTheEndsOfTheCalendar)
{
    constexpr Milliseconds most{std::int64_t{1} << 53U};
    const auto from = [](Instant time, Milliseconds at, Milliseconds to) {
        return trueTime({{}, at, time}, to);
    };
    EXPECT_EQ(from(ledger::latestTime, Milliseconds(0), most), ledger::latestTime);
    EXPECT_EQ(from(ledger::earliestTime, most, Milliseconds(0)), ledger::earliestTime);
    EXPECT_EQ(from(instantFromMs(5), most, most), instantFromMs(5));
    EXPECT_EQ(from(instantFromMs(5), most - Milliseconds(1), most), instantFromMs(6));
    EXPECT_EQ(from(Instant::max(), Milliseconds::min(), Milliseconds::max()), ledger::latestTime);
    EXPECT_EQ(from(Instant::min(), Milliseconds::max(), Milliseconds::min()), ledger::earliestTime);
}

}  // namespace spile::cellar
