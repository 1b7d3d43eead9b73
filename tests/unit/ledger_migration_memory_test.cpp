// A store of an earlier version is brought up to this one in little memory, however large it is.
#include "core/ledger/schema.hpp"
#include "tests/support/old_store.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>
#include <sqlite3.h>

namespace spile::cellar {

namespace {

constexpr int records = 2000;
constexpr std::size_t bytesOfEach = 60'000;

void recordLarge(Cellar& cellar, const SubjectId& subject)
{
    auto change = cellar.ledger().change();
    ASSERT_TRUE(change);
    for (int i = 0; i < records; ++i) {
        ledger::NewEntry entry{"of a later version", subject, {}, {}, {}, {}, {}};
        entry.fields = {{1, std::string(bytesOfEach, 'a')}};
        ASSERT_TRUE(change->record(std::move(entry)));
    }
    ASSERT_TRUE(change->commit());
}

}  // namespace

TEST(MigrationMemory, IsNotThatOfAllEntries)
{
    support::TestDevice device(93);
    auto cellar = device.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    ASSERT_TRUE(cellar->database().run("PRAGMA synchronous=OFF"));
    recordLarge(*cellar, small.barrel);
    ASSERT_TRUE(cellar->database().run(support::backToVersion3));
    cellar.reset();

    sqlite3_memory_highwater(1);
    cellar = device.reopen();
    const sqlite3_int64 most = sqlite3_memory_highwater(0);
    EXPECT_EQ(*cellar->database().integer(0, "PRAGMA user_version"), ledger::schemaVersion);
    constexpr sqlite3_int64 cache = 32 << 20;
    EXPECT_GT(most, 0) << "it is counted";
    EXPECT_LT(most, 2 * cache) << "and the entries have "
                               << static_cast<std::size_t>(records) * bytesOfEach;
}

}  // namespace spile::cellar
