// A cellar that an earlier version left behind opens, keeps what is in it and gets what is new.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/exporting.hpp"
#include "core/cellar/journal.hpp"
#include "core/cellar/queries.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/old_store.hpp"
#include "tests/support/small_cellar.hpp"

#include <gmock/gmock.h>
#include <map>
#include <set>

namespace spile::cellar {

namespace {

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

void makeOld(Cellar& cellar, const char* script)
{
    const auto made = cellar.database().run(script);
    ASSERT_TRUE(made) << support::textOf(made.error());
}

// All rows of all tables, as text.
std::map<std::string, std::vector<std::string>> rowsIn(ledger::Database& database)
{
    std::map<std::string, std::vector<std::string>> rows;
    EXPECT_TRUE(database.eachOnce(
        [&](const ledger::Row& table) {
            auto& of = rows[table.text(0)];
            return database.eachOnce(
                [&](const ledger::Row& row) {
                    std::string line;
                    for (int column = 0; column < row.columns(); ++column) {
                        line += row.text(column) + '|';
                    }
                    of.push_back(line);
                    return Result<void>();
                },
                "SELECT * FROM " + table.text(0));
        },
        "SELECT name FROM sqlite_schema WHERE type = 'table'"));
    return rows;
}

// What the tables, indices, triggers and views are, without the marks that a renaming leaves.
std::set<std::string> schemaIn(ledger::Database& database)
{
    std::set<std::string> all;
    EXPECT_TRUE(database.eachOnce(
        [&](const ledger::Row& row) {
            std::string sql = row.text(0);
            std::erase(sql, '"');
            all.insert(std::move(sql));
            return Result<void>();
        },
        "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL"));
    return all;
}

Path golden(const std::string& name)
{
    return Path(SPILE_SOURCE_DIR) / "tests/fixtures/golden" / name;
}

}  // namespace

// With corrections, a photo, a record set aside, one that waits, and a branched chain.
TEST(OldStore, OfVersion3KeepsEachRowAndAnswersAsBefore)
{
    support::TestDevice device(90);
    auto cellar = device.join(golden("all-1.spile"));
    ASSERT_TRUE(takeIn(*cellar, golden("gap-1.spile")));
    ledger::Database* database = &cellar->database();
    for (const char* some :
         {"SELECT count(*) FROM set_aside", "SELECT count(*) FROM waiting",
          "SELECT count(*) FROM entry_photo", "SELECT max(branches) - 1 FROM device_chain",
          "SELECT count(*) FROM state_amend", "SELECT count(*) FROM state_void"}) {
        EXPECT_GT(*database->integer(0, some), 0) << some;
    }
    const auto rows = rowsIn(*database);
    const auto schema = schemaIn(*database);
    const auto root = *stateRoot(*cellar);
    makeOld(*cellar, support::backToVersion3);
    EXPECT_NE(schemaIn(*database), schema);
    cellar.reset();

    cellar = device.reopen();
    database = &cellar->database();
    EXPECT_THAT(copiesIn(device), testing::ElementsAre("ledger-v3-2025-09-01.db"));
    EXPECT_EQ(*database->integer(0, "PRAGMA user_version"), ledger::schemaVersion);
    EXPECT_EQ(*database->integer(0, "PRAGMA foreign_keys"), 1);
    EXPECT_EQ(*database->integer(0, "PRAGMA legacy_alter_table"), 0);
    EXPECT_EQ(*database->integer(0, "SELECT count(*) FROM pragma_foreign_key_check"), 0);
    EXPECT_EQ(rowsIn(*database), rows);
    EXPECT_EQ(schemaIn(*database), schema);
    EXPECT_EQ(*stateRoot(*cellar), root);
    EXPECT_EQ(support::problemsOf(*cellar), "");
    EXPECT_FALSE(database->run("DELETE FROM entry"));
    EXPECT_FALSE(database->run("UPDATE entry SET seq = seq + 1"));
    // What waits for an entry before it finds it, and a record that is corrected is found.
    EXPECT_EQ(takeIn(*cellar, golden("between-1.spile"))->added, 2U);
    EXPECT_EQ(*database->integer(0, "SELECT count(*) FROM waiting"), 0);
    const auto draw = database->first([](const ledger::Row& row) { return row.id<EntryId>(0); },
                                      "SELECT entry FROM state_draw LIMIT 1");
    EXPECT_TRUE(voidEntry(*cellar, **draw));
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST(OldStore, OpensWithItsRecordsItsSheetsAndWhatIsNew)
{
    support::TestDevice device(87);
    auto cellar = device.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    const SubjectId sheet = *openSheet(*cellar, small.barrel, small.person);
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(handOut(*cellar, device.folder.path() / "day.spile", {}));
    const std::uint64_t all = ownActs(cellar->database(), fromTheNewest, 1)->at(0).seq;
    makeOld(*cellar, support::backToVersion3);
    makeOld(*cellar, support::backToVersion1);
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
    makeOld(*cellar, support::backToVersion3);
    makeOld(*cellar, support::backToVersion1);
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
