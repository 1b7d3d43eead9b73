// Between each save and its acknowledgement the disk was told to keep it.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/flight.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "tests/support/counting_vfs.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class SyncBeforeAcknowledging : public testing::Test {
protected:
    support::VfsCounter& disk = support::registerCountingVfs();
    support::TestDevice device{31};
    std::unique_ptr<Cellar> cellar;
    support::SmallCellar small;

    void SetUp() override
    {
        device.vfs = "counting";
        cellar = device.newCellar();
        small = support::fillSmallCellar(*cellar);
    }

    // Does something that saves, and looks at the disk as it is when the act has returned.
    template <class Act>
    void expectKept(const char* name, Act act)
    {
        SCOPED_TRACE(name);
        device.clock.pass(Milliseconds(1000));
        disk.reset();
        const auto done = act();
        ASSERT_TRUE(done) << support::textOf(done.error());
        EXPECT_GE(disk.writes("-wal"), 1U) << "it saved nothing";
        EXPECT_GE(disk.syncs("-wal"), 1U);
        EXPECT_EQ(disk.unsynced("-wal"), 0U);
        EXPECT_EQ(disk.unsynced(".db"), 0U);
    }
};

}  // namespace

TEST_F(SyncBeforeAcknowledging, HoldsForEveryActOnABarrel)
{
    const SubjectId barrel = small.barrel;
    EntryId draw;
    expectKept("draw", [&] {
        auto done = recordDraw(
            *cellar, {.barrel = barrel, .volume = millilitres(100), .method = "sample hole"});
        draw = done.value_or(EntryId());
        return done;
    });
    expectKept("gauge", [&] {
        return recordGauge(*cellar, {.barrel = barrel, .volume = litres(180), .method = "dip"});
    });
    expectKept("check", [&] { return recordCheck(*cellar, {.barrel = barrel, .finding = "dry"}); });
    expectKept("taste", [&] {
        return recordTaste(
            *cellar,
            {.barrel = barrel, .scores = {{"oak", 5}}, .circumstance = {.person = small.person}});
    });
    expectKept("reading", [&] { return recordReading(*cellar, {.barrel = barrel, .ph = 4.2}); });
    expectKept("verdict",
               [&] { return recordVerdict(*cellar, {.barrel = barrel, .verdict = "hold"}); });
    expectKept("amend", [&] {
        return amend(*cellar, draw,
                     {{static_cast<std::uint32_t>(Field::VolumeMl), std::int64_t{120}}});
    });
    expectKept("void", [&] { return voidEntry(*cellar, draw); });
    expectKept("photo", [&] {
        const Bytes picture = support::smallPicture();
        return recordPhoto(*cellar, {.barrel = barrel, .picture = picture, .purpose = "colour"});
    });
    expectKept("empty", [&] { return recordEmpty(*cellar, {.barrel = barrel}); });
    expectKept("fill", [&] { return recordFill(*cellar, {.barrel = barrel}); });
    expectKept("flight", [&] {
        return beginFlight(*cellar, {.name = "Monday", .glasses = {{101, barrel}}});
    });
}

TEST_F(SyncBeforeAcknowledging, HoldsForWhatIsRegistered)
{
    SubjectId place;
    expectKept("person", [&] { return registerPerson(*cellar, "Kim"); });
    expectKept("place", [&] {
        auto done = registerPlace(*cellar, "Rack 2");
        place = done.value_or(SubjectId());
        return done;
    });
    expectKept("target", [&] { return registerTarget(*cellar, "Round", {{"oak", 3, 5}}); });
    expectKept("batch", [&] { return registerBatch(*cellar, {"Dark Water"}); });
    expectKept("barrel", [&] { return registerBarrel(*cellar, {.mark = "Rum 4"}); });
    expectKept("move", [&] { return recordMove(*cellar, small.barrel, place); });
}

TEST_F(SyncBeforeAcknowledging, HoldsForEveryTapOnASheet)
{
    SubjectId sheet;
    expectKept("open", [&] {
        auto done = openSheet(*cellar, small.barrel, small.person);
        sheet = done.value_or(SubjectId());
        return done;
    });
    expectKept("score", [&] { return tapScore(*cellar, sheet, "oak", 5); });
    expectKept("not judged", [&] { return tapScore(*cellar, sheet, "vanilla", std::nullopt); });
    expectKept("fault", [&] { return tapFault(*cellar, sheet, "acetic", 2); });
    expectKept("fault back", [&] { return tapFault(*cellar, sheet, "acetic", std::nullopt); });
    expectKept("liking", [&] { return tapLiking(*cellar, sheet, 6); });
    expectKept("tired", [&] { return tapPalateTired(*cellar, sheet, true); });
    expectKept("note", [&] { return writeNote(*cellar, sheet, "soft"); });
    expectKept("order", [&] { return keepOrder(*cellar, sheet, {"oak", "vanilla"}); });
    expectKept("undo", [&] { return undoTap(*cellar, sheet); });
    expectKept("close", [&] { return closeSheet(*cellar, sheet); });
}

TEST_F(SyncBeforeAcknowledging, HoldsForDayFiles)
{
    support::TestDevice other{32};
    const Path file = device.folder.path() / "day.spile";
    expectKept("hand out", [&] { return handOut(*cellar, file, {}); });
    other.vfs = "counting";
    const auto joined = other.join(file);
    ASSERT_TRUE(recordCheck(*cellar, {.barrel = small.barrel, .finding = "dry"}));
    ASSERT_TRUE(handOut(*cellar, file, {}));
    expectKept("take in", [&] { return takeIn(*joined, file); });
    expectKept("admit", [&] {
        support::admitDevice(*cellar, *joined);
        return Result<void>();
    });
}

TEST_F(SyncBeforeAcknowledging, HoldsWhenTheLogIsMovedIntoTheDatabase)
{
    // Large notes, so that the log passes its limit and is checkpointed within these acts.
    const std::string note(4000, 'n');
    std::uint64_t moved = 0;
    for (int i = 0; i < 300; ++i) {
        expectKept("check", [&] {
            return recordCheck(
                *cellar,
                {.barrel = small.barrel, .finding = "dry", .circumstance = {.note = note}});
        });
        moved += disk.writes(".db");
    }
    EXPECT_GT(moved, 0U);
}

TEST(SyncCounting, FindsADatabaseThatDoesNotSync)
{
    support::VfsCounter& disk = support::registerCountingVfs();
    const support::TempFolder folder;
    for (const char* synchronous : {"OFF", "NORMAL"}) {
        SCOPED_TRACE(synchronous);
        auto database =
            ledger::Database::open((folder.path() / (std::string(synchronous) + ".db")).string(),
                                   ledger::Database::Mode::Write, "counting");
        ASSERT_TRUE(database);
        ASSERT_TRUE(database->run("CREATE TABLE t(x)"));
        ASSERT_TRUE(database->run("PRAGMA synchronous=" + std::string(synchronous)));
        disk.reset();
        ASSERT_TRUE(database->begin());
        ASSERT_TRUE(database->execute("INSERT INTO t VALUES(1)"));
        ASSERT_TRUE(database->commit());
        EXPECT_EQ(disk.syncs(), 0U);
        EXPECT_GE(disk.unsynced("-wal"), 1U);
    }
}

}  // namespace spile::cellar
