// A damaged record that no day file brings back: everything else goes on with it there.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/observing.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/clocks.hpp"
#include "core/cellar/exporting.hpp"
#include "core/cellar/journal.hpp"
#include "core/cellar/verifying.hpp"
#include "core/ledger/mending.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/fleet.hpp"

#include <gmock/gmock.h>
#include <limits>

namespace spile::cellar {

namespace {

// A desk and a phone that hold the same.
class DamagedRecord : public testing::Test {
protected:
    static constexpr std::size_t deskAt = 0, phoneAt = 1;
    support::Fleet fleet{2};

    void SetUp() override { fleet.exchangeUntilQuiet(); }

    Cellar& desk() { return fleet.cellar(deskAt); }
    Cellar& phone() { return fleet.cellar(phoneAt); }
    static Result<EntryId> tryDraw(Cellar& cellar, const SubjectId& barrel)
    {
        return recordDraw(cellar, {.barrel = barrel, .volume = millilitres(10), .method = "valve"});
    }
    EntryId draw(Cellar& cellar)
    {
        fleet.at(deskAt).clock.pass(std::chrono::minutes(5));
        fleet.at(phoneAt).clock.pass(std::chrono::minutes(5));
        const auto made = tryDraw(cellar, fleet.small().barrel);
        EXPECT_TRUE(made) << support::textOf(made.error());
        return made.value_or(EntryId());
    }
    // At the desk, as a flipped bit does: its bytes are no entry any more.
    void spoil(const EntryId& id)
    {
        const auto done = desk().database().run(
            std::string("DROP TRIGGER entry_is_never_changed; UPDATE entry SET core = CAST(x'00' "
                        "|| substr(core, 2) AS BLOB) WHERE id = x'") +
            id.hex() + "';" + ledger::entriesNeverChange);
        ASSERT_TRUE(done) << support::textOf(done.error());
    }
    // Close the desk's cellar and open it again.
    void startAnew()
    {
        ASSERT_TRUE(desk().database().checkpoint(0));
        fleet.backUp(deskAt);
        ASSERT_TRUE(fleet.restore(deskAt));
    }
    // The whole of what the phone has mends it, and the state is one again.
    void expectMends()
    {
        const auto report = check(desk(), {});
        ASSERT_TRUE(report) << support::textOf(report.error());
        ASSERT_TRUE(keepRound(desk(), *report, fleet.at(deskAt).clock.now()));
        EXPECT_EQ(fleet.takeIn(deskAt, fleet.handOut(phoneAt, std::nullopt)).mended, 1U);
        EXPECT_EQ(support::problemsOf(desk()), "");
        EXPECT_EQ(*stateRoot(desk()), [&] {
            fleet.takeIn(phoneAt, fleet.handOut(deskAt, std::nullopt));
            return *stateRoot(phone());
        }());
    }
};
using Fault14_DamagedRecord = DamagedRecord;

}  // namespace

TEST_F(Fault14_DamagedRecord, LetsTheCellarOpenForANewStateAndRecordMore)
{
    const EntryId spoilt = draw(desk());
    fleet.exchangeUntilQuiet();
    spoil(spoilt);
    ASSERT_TRUE(desk().database().run("UPDATE meta SET value = 0 WHERE key = 'projection';"));
    startAnew();
    draw(desk());  // after its newest record, which is the damaged one
    expectMends();
}

TEST_F(Fault14_DamagedRecord, LetsItsDeviceBeCutOff)
{
    const EntryId spoilt = draw(phone());
    fleet.exchangeUntilQuiet();
    spoil(spoilt);
    const auto cut =
        cutOff(desk(), {.device = phone().ledger().device(), .lastSeq = 0, .reason = "lost"});
    EXPECT_TRUE(cut) << support::textOf(cut.error());
    expectMends();
}

TEST_F(Fault14_DamagedRecord, LetsCorrectionsOfItComeIn)
{
    const EntryId spoilt = draw(desk());
    fleet.exchangeUntilQuiet();
    ASSERT_TRUE(voidEntry(phone(), spoilt));
    spoil(spoilt);
    fleet.takeIn(deskAt, fleet.handOut(phoneAt, deskAt));
    expectMends();
}

TEST_F(Fault14_DamagedRecord, ThatCorrectsLetsOthersComeIn)
{
    const EntryId drawn = draw(desk());
    const auto amended =
        amend(desk(), drawn, {{static_cast<std::uint32_t>(Field::VolumeMl), std::int64_t{90}}});
    ASSERT_TRUE(amended) << support::textOf(amended.error());
    fleet.exchangeUntilQuiet();
    ASSERT_TRUE(voidEntry(phone(), drawn));
    spoil(*amended);
    fleet.takeIn(deskAt, fleet.handOut(phoneAt, deskAt));
    expectMends();
}

TEST_F(Fault14_DamagedRecord, ThatObservesAClockLetsItsDeviceRecord)
{
    const auto observed = observeOwnClock(desk(), {fleet.at(deskAt).clock.now()});
    ASSERT_TRUE(observed);
    fleet.exchangeUntilQuiet();
    spoil(*observed);
    draw(desk());
    ASSERT_TRUE(observeOwnClock(desk(), {fleet.at(deskAt).clock.now()}));
    expectMends();
}

TEST_F(Fault14_DamagedRecord, LetsClocksBeDoubtedAndItsNeighboursBeShownAndExported)
{
    draw(phone());
    const EntryId spoilt = draw(desk());
    draw(phone());
    fleet.exchangeUntilQuiet();
    spoil(spoilt);
    fleet.at(deskAt).clock.setWall(fleet.at(deskAt).clock.now() - std::chrono::hours(1));
    const auto doubt = clockDoubt(desk().database(), fleet.at(deskAt).clock);
    ASSERT_TRUE(doubt) << support::textOf(doubt.error());
    EXPECT_TRUE(doubt->ahead);
    EXPECT_TRUE(ownActs(desk().database(), std::numeric_limits<std::int64_t>::max(), 50));
    std::uint64_t exported = 0;
    std::uint64_t left = 0;
    ASSERT_TRUE(eachEntry(
        desk().database(),
        [&](const ExportedEntry&) {
            ++exported;
            return Result<void>();
        },
        [&](const Error&) { ++left; }));
    const auto all = desk().database().integer(0, "SELECT count(*) FROM entry");
    EXPECT_EQ(left, 1U);
    EXPECT_EQ(exported + 1, static_cast<std::uint64_t>(*all));
    expectMends();
}

TEST_F(Fault14_DamagedRecord, OfTrustIsNamedAndComesBack)
{
    const auto admission = desk().database().first(
        [](const ledger::Row& row) { return row.id<EntryId>(0); },
        "SELECT id FROM entry WHERE kind = 'device' AND subject = ?", phone().ledger().device());
    ASSERT_TRUE(admission && *admission);
    spoil(**admission);
    const auto report = check(desk(), {});
    ASSERT_TRUE(report) << support::textOf(report.error());
    EXPECT_GE(report->problems.size(), 1U);
    expectMends();
}

TEST_F(Fault14_DamagedRecord, ThatWaitedForItsDeviceComesOnceMore)
{
    support::Fleet strangers(2);
    for (int i = 0; i < 3; ++i) {
        ASSERT_TRUE(tryDraw(strangers.cellar(phoneAt), strangers.small().barrel));
    }
    strangers.takeIn(deskAt, strangers.handOut(phoneAt, std::nullopt));
    ASSERT_TRUE(strangers.cellar(deskAt).database().run(
        "UPDATE waiting SET core = CAST(x'00' || substr(core, 2) AS BLOB) WHERE seq = 2;"));
    ASSERT_EQ(strangers.cellar(deskAt).database().changes(), 1);
    strangers.exchangeUntilQuiet();  // and admitted
    EXPECT_EQ(support::problemsOf(strangers.cellar(deskAt)), "");
    EXPECT_EQ(*stateRoot(strangers.cellar(deskAt)), *stateRoot(strangers.cellar(phoneAt)));
}

// The records before it are sound, but the tap was never as they would have it without it.
TEST_F(Fault14_DamagedRecord, OfATapThatWaitedHoldsAllOfItBack)
{
    support::Fleet strangers(2);
    Cellar& stranger = strangers.cellar(phoneAt);
    auto change = stranger.ledger().change();
    ASSERT_TRUE(change);
    const ledger::NewEntry entry{
        "of a later version", strangers.small().barrel, {}, {}, {}, {}, {}};
    ASSERT_TRUE(change->record(entry));
    ASSERT_TRUE(change->recordGroup({entry, entry, entry}));
    ASSERT_TRUE(change->commit());
    const Path file = strangers.handOut(phoneAt, std::nullopt);
    strangers.takeIn(deskAt, file);
    ledger::Database& there = strangers.cellar(deskAt).database();
    ASSERT_TRUE(there.run(
        "UPDATE waiting SET core = CAST(x'00' || substr(core, 2) AS BLOB) WHERE seq = 3;"));
    const auto admitted =
        ledger::admit(strangers.cellar(deskAt).ledger(), stranger.ledger().device(), "Phone",
                      ledger::DeviceRole::Phone);
    ASSERT_TRUE(admitted) << support::textOf(admitted.error());
    EXPECT_EQ(admitted->linked, 1) << "what is no part of the tap";
    EXPECT_EQ(*there.integer(0, "SELECT count(*) FROM waiting"), 2);
    strangers.takeIn(deskAt, file);  // the same once more
    EXPECT_EQ(*there.integer(0, "SELECT count(*) FROM waiting"), 0);
    strangers.exchangeUntilQuiet();
    EXPECT_EQ(support::problemsOf(strangers.cellar(deskAt)), "");
    EXPECT_EQ(*stateRoot(strangers.cellar(deskAt)), *stateRoot(stranger));
}

// A tap in the app is carried out between two steps of taking in.
TEST_F(Fault14_DamagedRecord, IsLookedForWithoutHinderingTaps)
{
    for (int i = 0; i < 600; ++i) {
        draw(desk());
    }
    const EntryId spoilt = draw(desk());
    fleet.exchangeUntilQuiet();
    spoil(spoilt);
    const auto report = check(desk(), {});
    ASSERT_TRUE(report && keepRound(desk(), *report, fleet.at(deskAt).clock.now()));
    int tapped = 0;
    std::string refused;
    const auto tap = [&](std::uint64_t, std::uint64_t) {
        const auto drawn = tryDraw(desk(), fleet.small().barrel);
        refused += drawn ? "" : support::textOf(drawn.error()) + "\n";
        ++tapped;
    };
    const Job job(tap, nullptr);
    const auto taken = ledger::takeIn(desk().ledger(), fleet.handOut(phoneAt, std::nullopt),
                                      ledger::SignatureCheck::EveryEntry, job);
    ASSERT_TRUE(taken) << support::textOf(taken.error());
    EXPECT_EQ(taken->mended, 1U);
    EXPECT_EQ(refused, "");
    EXPECT_GT(tapped, 3);
    EXPECT_EQ(support::problemsOf(desk()), "");
}

}  // namespace spile::cellar
