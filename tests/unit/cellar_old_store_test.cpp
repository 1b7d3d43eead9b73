// A cellar that an earlier version left behind opens, keeps what is in it and gets what is new.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/exporting.hpp"
#include "core/cellar/journal.hpp"
#include "core/cellar/queries.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/small_cellar.hpp"

#include <gmock/gmock.h>

namespace spile::cellar {

namespace {

// Takes away what later versions of the ledger and of the state brought.
constexpr const char* backToVersion1 = R"sql(
DROP TABLE set_aside;
DROP INDEX entry_trust;
DROP INDEX device_limited;
DROP INDEX device_branched;
ALTER TABLE device_chain DROP COLUMN limited;
ALTER TABLE device_chain DROP COLUMN branches;
DROP INDEX taken_in_from;
DROP INDEX handed_out_own;
ALTER TABLE handed_out DROP COLUMN own_seq;
ALTER TABLE sheet DROP COLUMN step;
DROP TABLE state_barrel_now;
CREATE TABLE state_barrel_now(subject BLOB PRIMARY KEY, code TEXT NOT NULL) STRICT, WITHOUT ROWID;
UPDATE meta SET value = 1 WHERE key = 'projection';
PRAGMA user_version=1;
)sql";

// What a version to come may do to the tables: the state's have another shape.
constexpr const char* toTheNextVersion = R"sql(
DROP TABLE state_barrel_now;
CREATE TABLE state_barrel_now(subject BLOB PRIMARY KEY, colour TEXT NOT NULL) STRICT, WITHOUT ROWID;
DROP TABLE state_fill;
ALTER TABLE entry ADD COLUMN star INTEGER;
UPDATE meta SET value = 1000 WHERE key = 'projection';
PRAGMA user_version=1000;
)sql";

std::vector<std::string> copiesIn(support::TestDevice& device)
{
    auto names = *device.files.list(device.cellarFolder());
    std::erase_if(names, [](const std::string& name) { return !name.starts_with("ledger-v"); });
    return names;
}

}  // namespace

TEST(OldStore, OpensWithItsRecordsItsSheetsAndWhatIsNew)
{
    support::TestDevice device(87);
    auto cellar = device.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    const SubjectId sheet = *openSheet(*cellar, small.barrel, small.person);
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(handOut(*cellar, device.folder.path() / "day.spile", {}));
    const std::uint64_t all = ownActs(cellar->database(), fromTheNewest, 1)->at(0).seq;
    const auto broken = cellar->database().run(backToVersion1);
    ASSERT_TRUE(broken) << support::textOf(broken.error());
    cellar.reset();

    cellar = device.reopen();
    EXPECT_EQ(*cellar->database().integer(0, "PRAGMA user_version"), ledger::schemaVersion);
    EXPECT_THAT(copiesIn(device), testing::ElementsAre("ledger-v1-2025-09-01.db"));
    EXPECT_EQ((*barrelById(cellar->database(), small.barrel))->mark, "Rum 3");
    EXPECT_EQ(readSheet(*cellar, sheet)->taste.scores.at("oak"), 7);
    EXPECT_EQ(openSheets(*cellar)->front().step, "");
    ASSERT_TRUE(keepStep(*cellar, sheet, "liking"));
    EXPECT_EQ(unsent(cellar->database())->entries, all);  // what was covered is not known
    ASSERT_TRUE(handOut(*cellar, device.folder.path() / "day.spile", {}));
    EXPECT_EQ(unsent(cellar->database())->entries, 0U);
    EXPECT_EQ(support::problemsOf(*cellar), "");
    cellar.reset();
    device.clock.pass(std::chrono::days(14));
    cellar = device.reopen();
    EXPECT_EQ(openSheets(*cellar)->front().step, "liking");
    EXPECT_EQ(copiesIn(device).size(), 1U);
    cellar.reset();
    device.clock.pass(std::chrono::days(1));
    cellar = device.reopen();
    EXPECT_TRUE(copiesIn(device).empty());
}

TEST(OldStore, IsLeftAsItIsWhereThereIsNoRoomForItsCopy)
{
    support::TestDevice device(88);
    auto cellar = device.newCellar();
    ASSERT_TRUE(cellar->database().run(backToVersion1));
    ASSERT_TRUE(cellar->database().checkpoint(0));
    cellar.reset();
    const Sha256 before = support::storedBytes(device.cellarFolder());
    support::FaultyFileSystem full(device.files);
    full.failAt({.call = support::FileCall::Append, .code = ErrorCode::StorageFull});
    const auto opened = Cellar::open(device.cellarFolder(),
                                     {device.clock, full, device.random, device.ids, device.keys});
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, ErrorCode::StorageFull);
    EXPECT_EQ(support::storedBytes(device.cellarFolder()), before);
    EXPECT_TRUE(copiesIn(device).empty());
    EXPECT_EQ(support::problemsOf(*device.reopen()), "");
}

// What an app of this version does with a cellar of the next: a downgrade.
TEST(Fault52_OlderApp, ReadsACellarOfANewerVersionAndWritesNothing)
{
    support::TestDevice device(89);
    auto cellar = device.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    ASSERT_TRUE(cellar->database().run(toTheNextVersion));
    ASSERT_TRUE(cellar->database().checkpoint(0));
    cellar.reset();
    const Sha256 before = support::storedBytes(device.cellarFolder());

    cellar = device.reopen();
    EXPECT_TRUE(cellar->ledger().readsOnly());
    EXPECT_EQ(cellar->identity().name, "Test cellar");
    EXPECT_EQ((*barrelById(cellar->database(), small.barrel))->mark, "Rum 3");
    EXPECT_EQ(historyOf(cellar->database(), small.barrel)->fills.size(), 1U);
    auto reader = cellar->ledger().openReader();
    ASSERT_TRUE(reader);
    EXPECT_EQ((*barrelById(*reader, small.barrel))->mark, "Rum 3");
    const auto moved = registerPlace(*cellar, "Cellar");
    ASSERT_FALSE(moved);
    EXPECT_EQ(moved.error().code, ErrorCode::Unsupported);
    EXPECT_EQ(openSheet(*cellar, small.barrel, small.person).error().code, ErrorCode::Unsupported);
    EXPECT_EQ(handOut(*cellar, device.folder.path() / "day.spile", {}).error().code,
              ErrorCode::Unsupported);
    std::uint64_t exported = 0;
    ASSERT_TRUE(eachEntry(
        cellar->database(),
        [&](const ExportedEntry&) {
            ++exported;
            return Result<void>();
        },
        [](const Error& wrong) { ADD_FAILURE() << support::textOf(wrong); }));
    EXPECT_GT(exported, 5U);
    cellar.reset();
    EXPECT_EQ(support::storedBytes(device.cellarFolder()), before);
}

}  // namespace spile::cellar
