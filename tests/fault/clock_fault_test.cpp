// Clocks that are wrong, jump, travel or stand at their limits: nothing is lost by them, nothing is
// decided by them, and what is known better sets the times right.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/observing.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/clocks.hpp"
#include "core/cellar/queries.hpp"
#include "core/ledger/cbor.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using support::Fleet;

EntryId draw(Fleet& fleet, std::size_t device, const std::optional<ledger::EventTime>& said = {})
{
    const auto made = recordDraw(fleet.cellar(device), {.barrel = fleet.small().barrel,
                                                        .volume = millilitres(100),
                                                        .method = "sample hole",
                                                        .circumstance = {.at = said}});
    EXPECT_TRUE(made) << support::textOf(made.error());
    return made.value_or(EntryId());
}

std::vector<DrawRow> draws(Fleet& fleet, std::size_t device)
{
    return historyOf(fleet.cellar(device).database(), fleet.small().barrel)->draws;
}

ledger::Entry coreOf(Cellar& cellar, const EntryId& id)
{
    const auto found = cellar.database().first(
        [](const ledger::Row& row) { return ledger::decodeCore(row.blob(0)); },
        "SELECT core FROM entry WHERE id = ?", id);
    return ***found;
}

void expectOneState(Fleet& fleet)
{
    fleet.exchangeUntilQuiet();
    for (std::size_t i = 0; i < fleet.size(); ++i) {
        EXPECT_EQ(*stateRoot(fleet.cellar(i)), *stateRoot(fleet.cellar(0))) << i;
        EXPECT_EQ(support::problemsOf(fleet.cellar(i)), "") << i;
    }
}

// A device of one, and the true time beside its clock.
class Fault31_ClockJumpsDuringTheDay : public testing::Test {
protected:
    Fleet fleet{1};
    SimulatedClock& clock = fleet.at(0).clock;
    Instant truth = clock.now();

    void pass(Milliseconds time)
    {
        clock.pass(time);
        truth += time;
    }
    void jump(Milliseconds by) { clock.setWall(clock.now() + by); }
    ledger::Entry record(const std::optional<ledger::EventTime>& said = {})
    {
        return coreOf(fleet.cellar(0), draw(fleet, 0, said));
    }
};

// The smallest entry that is sound.
ledger::Entry plainEntry()
{
    ledger::Entry entry;
    entry.seq = 2;
    entry.previous = EntryId({1});
    entry.recorded = instantFromMs(0);
    entry.kind = "note";
    return entry;
}
bool isRead(const ledger::Entry& entry)
{
    const auto read = ledger::decodeCore(ledger::encodeCore(entry));
    return read && *read == entry;
}

}  // namespace

TEST(Fault30_ClockTwoYearsOff, IsRepairedByOneObservation)
{
    for (const auto off : {days(730), -days(730)}) {
        Fleet fleet(2);
        fleet.exchangeUntilQuiet();
        const Instant start = fleet.at(0).clock.now();
        fleet.at(1).clock.setWall(start + off);
        std::vector<Instant> truth;
        for (int i = 1; i <= 5; ++i) {
            fleet.at(0).clock.pass(hours(7));
            fleet.at(1).clock.pass(hours(7));
            draw(fleet, 1);
            truth.push_back(start + hours(7) * i);
        }
        fleet.exchangeUntilQuiet();
        EXPECT_NE(draws(fleet, 0).front().at, truth.front());
        const auto shown = fleet.at(1).clock.now();
        const auto seen = observeClock(fleet.cellar(0), fleet.cellar(1).ledger().device(), shown,
                                       {fleet.at(0).clock.now()});
        ASSERT_TRUE(seen) << support::textOf(seen.error());
        fleet.exchangeUntilQuiet();
        for (std::size_t device = 0; device < 2; ++device) {
            const auto rows = draws(fleet, device);
            ASSERT_EQ(rows.size(), truth.size());
            for (std::size_t i = 0; i < truth.size(); ++i) {
                EXPECT_EQ(rows[i].at, truth[i]);
                EXPECT_EQ(rows[i].clock, truth[i] + off);
            }
        }
        expectOneState(fleet);
    }
}

TEST_F(Fault31_ClockJumpsDuringTheDay, LeavesRecordedTimesInOrderAndIntervalsTrue)
{
    const std::vector<Milliseconds> jumps = {hours(1), -hours(3), days(40), -days(365), minutes(3)};
    const ledger::Entry first = record();
    const Instant begun = truth;
    std::vector<Instant> true_;
    Instant latest = first.recorded;
    for (const Milliseconds by : jumps) {
        pass(minutes(20));
        jump(by);
        const ledger::Entry entry = record();
        true_.push_back(truth);
        EXPECT_GE(entry.recorded, latest);
        EXPECT_EQ(clockOf(entry), clock.now());
        EXPECT_EQ(entry.sinceBoot - first.sinceBoot, truth - begun);
        latest = entry.recorded;
    }
    EXPECT_TRUE(clockDoubt(fleet.cellar(0).database(), clock)->behindOwn);
    ASSERT_TRUE(observeOwnClock(fleet.cellar(0), {truth}));
    const auto rows = draws(fleet, 0);
    ASSERT_EQ(rows.size(), true_.size() + 1);
    for (std::size_t i = 0; i < true_.size(); ++i) {
        EXPECT_EQ(rows[i + 1].at, true_[i]);
    }
    EXPECT_EQ(support::problemsOf(fleet.cellar(0)), "");
}

TEST_F(Fault31_ClockJumpsDuringTheDay, SummerTimeAndTravelMoveTheZoneAlone)
{
    // The hour after the end of summer time comes twice on the wall, and once in UTC.
    clock.setWall(*fromIso("2025-10-26T00:50Z"));
    const ledger::Entry summer = record(ledger::EventTime{clock.now(), 120});
    pass(minutes(20));
    const ledger::Entry winter = record(ledger::EventTime{clock.now(), 60});
    pass(hours(5));
    const ledger::Entry abroad = record(ledger::EventTime{clock.now(), -300});
    EXPECT_EQ(summer.at->time, *fromIso("2025-10-26T00:50Z"));
    EXPECT_EQ(winter.at->time, *fromIso("2025-10-26T01:10Z"));
    EXPECT_EQ(summer.at->zoneMinutes, 120);
    EXPECT_EQ(winter.at->zoneMinutes, 60);
    EXPECT_EQ(abroad.at->zoneMinutes, -300);
    const auto rows = draws(fleet, 0);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[1].at - rows[0].at, minutes(20));
    EXPECT_EQ(rows[2].at - rows[1].at, hours(5));
    EXPECT_FALSE(clockDoubt(fleet.cellar(0).database(), clock)->any());
}

// A clock of POSIX has no 23:59:60: it shows the second before it twice.
TEST(Fault31_LeapSecond, IsShownTwiceAndNothingGoesBack)
{
    EXPECT_FALSE(fromIso("2016-12-31T23:59:60Z"));
    support::TestDevice device(31);
    const Instant last = *fromIso("2016-12-31T23:59:59Z") + Milliseconds(700);
    device.clock.setWall(last - hours(1));
    const auto cellar = device.newCellar();
    const auto small = support::fillSmallCellar(*cellar);
    device.clock.pass(last - device.clock.now());
    const auto record = [&] {
        const auto made = recordDraw(
            *cellar, {.barrel = small.barrel, .volume = millilitres(100), .method = "valve"});
        EXPECT_TRUE(made);
        return coreOf(*cellar, *made);
    };
    const ledger::Entry before = record();
    device.clock.pass(seconds(1));
    device.clock.setWall(device.clock.now() - seconds(1));  // 23:59:60.7
    const ledger::Entry leap = record();
    device.clock.pass(Milliseconds(200));
    device.clock.setWall(device.clock.now() - Milliseconds(500));  // and nudged by the network
    const ledger::Entry nudged = record();
    device.clock.pass(seconds(2));
    const ledger::Entry after = record();
    EXPECT_EQ(before.recorded, last);
    EXPECT_EQ(leap.recorded, last);
    EXPECT_EQ(leap.sinceBoot - before.sinceBoot, seconds(1));
    EXPECT_EQ(nudged.recorded, last);
    EXPECT_EQ(nudged.wall, last - Milliseconds(300));
    EXPECT_EQ(after.recorded, *fromIso("2017-01-01") + Milliseconds(1400));
    EXPECT_EQ(after.sinceBoot - before.sinceBoot, Milliseconds(3200));
    EXPECT_FALSE(clockDoubt(cellar->database(), device.clock)->any());
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST(Fault34_SequenceNumber, IsReadUpTo2To53AndNotBeyond)
{
    constexpr std::uint64_t most = std::uint64_t{1} << 53U;
    ledger::Entry entry = plainEntry();
    for (const std::uint64_t seq : {most - 1, most}) {
        entry.seq = seq;
        EXPECT_TRUE(isRead(entry)) << seq;
    }
    for (const std::uint64_t seq : {std::uint64_t{0}, most + 1, ~std::uint64_t{0}}) {
        entry.seq = seq;
        EXPECT_EQ(ledger::decodeCore(ledger::encodeCore(entry)).error().code, ErrorCode::Damaged)
            << seq;
    }
}

TEST(Fault34_SequenceNumber, BeyondItsEndNothingIsRecordedAndNothingIsTouched)
{
    constexpr std::int64_t most = std::int64_t{1} << 53U;
    support::TestDevice device(34);
    auto cellar = device.newCellar();
    const auto small = support::fillSmallCellar(*cellar);
    // A head is believed only where it is an entry of the chain, so that the entry says so, too.
    const auto fill = [&](std::int64_t seq) {
        {
            auto change = cellar->ledger().change();
            ledger::Database& database = change->database();
            EXPECT_TRUE(database.run(ledger::entriesMayChange));
            EXPECT_TRUE(
                database.execute("UPDATE entry SET seq = ? WHERE id = (SELECT id FROM head)", seq));
            EXPECT_TRUE(database.run(ledger::entriesNeverChange));
            EXPECT_TRUE(database.execute("UPDATE head SET seq = ?", seq));
            EXPECT_TRUE(change->commit());
        }
        cellar.reset();
        cellar = device.reopen();
    };
    const auto record = [&] {
        return recordDraw(*cellar,
                          {.barrel = small.barrel, .volume = millilitres(100), .method = "valve"});
    };
    fill(most - 1);
    const auto last = record();
    ASSERT_TRUE(last) << support::textOf(last.error());
    EXPECT_EQ(coreOf(*cellar, *last).seq, static_cast<std::uint64_t>(most));
    const auto stored = support::entryCount(*cellar);
    for (int i = 0; i < 2; ++i) {
        const auto beyond = record();
        ASSERT_FALSE(beyond);
        EXPECT_EQ(beyond.error().code, ErrorCode::OutOfRange);
        EXPECT_EQ(beyond.error().subject, "seq");
        EXPECT_EQ(beyond.error().value, "9007199254740993");
        EXPECT_EQ(support::entryCount(*cellar), stored);
    }
}

TEST(Fault34_TimesAtTheirLimits, AreReadToTheMillisecond)
{
    ledger::Entry entry = plainEntry();
    for (const Instant end : {ledger::earliestTime, ledger::latestTime}) {
        entry.recorded = end;
        entry.wall = end;
        entry.at = ledger::EventTime{end, 0};
        entry.sinceBoot = ledger::sinceBootMax;
        EXPECT_TRUE(isRead(entry));
    }
    const auto refused = [](const ledger::Entry& one) {
        return !ledger::decodeCore(ledger::encodeCore(one));
    };
    const Milliseconds one(1);
    for (const Instant beyond : {ledger::earliestTime - one, ledger::latestTime + one}) {
        ledger::Entry other = plainEntry();
        other.recorded = beyond;
        EXPECT_TRUE(refused(other));
        other.recorded = instantFromMs(0);
        other.wall = beyond;
        EXPECT_TRUE(refused(other));
        other.wall.reset();
        other.at = ledger::EventTime{beyond, 0};
        EXPECT_TRUE(refused(other));
    }
    entry = plainEntry();
    entry.sinceBoot = ledger::sinceBootMax + one;
    EXPECT_TRUE(refused(entry));
}

// What is set right at the end of the calendar stays inside it, on all devices alike.
TEST(Fault34_TimesAtTheirLimits, AreSetRightInsideTheCalendar)
{
    for (const Instant right : {ledger::latestTime, ledger::earliestTime}) {
        Fleet fleet(2);
        fleet.exchangeUntilQuiet();
        SimulatedClock& clock = fleet.at(1).clock;
        const EntryId early = draw(fleet, 1);
        clock.pass(hours(5));
        ASSERT_TRUE(observeOwnClock(fleet.cellar(1), {right}));
        clock.pass(hours(5));
        const EntryId late = draw(fleet, 1);
        const auto timeOf = [&](const EntryId& id) {
            for (const DrawRow& row : draws(fleet, 1)) {
                if (row.entry == id) {
                    return row.at;
                }
            }
            return Instant();
        };
        EXPECT_EQ(timeOf(early), std::max(right - hours(5), ledger::earliestTime));
        EXPECT_EQ(timeOf(late), std::min(right + hours(5), ledger::latestTime));
        expectOneState(fleet);
    }
}

TEST(Fault34_TimesAtTheirLimits, AClockOutOfAllRangesStillRecords)
{
    Fleet fleet(1);
    SimulatedClock& clock = fleet.at(0).clock;
    clock.pass(std::chrono::years(300'000));  // the time since its start is more than 2^53 ms
    const ledger::Entry entry = coreOf(fleet.cellar(0), draw(fleet, 0));
    EXPECT_EQ(entry.recorded, ledger::latestTime);
    EXPECT_EQ(entry.sinceBoot, ledger::sinceBootMax);
    EXPECT_TRUE(clockDoubt(fleet.cellar(0).database(), clock));
    EXPECT_EQ(support::problemsOf(fleet.cellar(0)), "");
}

}  // namespace spile::cellar
