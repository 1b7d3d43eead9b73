// A cellar that an earlier version left behind opens, keeps what is in it and gets what is new.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/journal.hpp"
#include "core/cellar/queries.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

// Takes away what version 2 of the ledger and of the state brought.
constexpr const char* backToVersion1 = R"sql(
DROP INDEX taken_in_from;
DROP INDEX handed_out_own;
ALTER TABLE handed_out DROP COLUMN own_seq;
ALTER TABLE sheet DROP COLUMN step;
DROP TABLE state_barrel_now;
CREATE TABLE state_barrel_now(subject BLOB PRIMARY KEY, code TEXT NOT NULL) STRICT, WITHOUT ROWID;
UPDATE meta SET value = 1 WHERE key = 'projection';
PRAGMA user_version=1;
)sql";

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
    EXPECT_EQ((*barrelById(cellar->database(), small.barrel))->mark, "Rum 3");
    EXPECT_EQ(readSheet(*cellar, sheet)->taste.scores.at("oak"), 7);
    EXPECT_EQ(openSheets(*cellar)->front().step, "");
    ASSERT_TRUE(keepStep(*cellar, sheet, "liking"));
    EXPECT_EQ(unsent(cellar->database())->entries, all);  // what was covered is not known
    ASSERT_TRUE(handOut(*cellar, device.folder.path() / "day.spile", {}));
    EXPECT_EQ(unsent(cellar->database())->entries, 0U);
    EXPECT_EQ(support::problemsOf(*cellar), "");
    cellar.reset();
    cellar = device.reopen();
    EXPECT_EQ(openSheets(*cellar)->front().step, "liking");
}

}  // namespace spile::cellar
