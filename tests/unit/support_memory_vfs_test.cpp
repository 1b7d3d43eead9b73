#include "core/ledger/database.hpp"
#include "tests/support/memory_vfs.hpp"

#include <gtest/gtest.h>

namespace spile::support {

using ledger::Database;

namespace {

class MemoryDatabase : public testing::Test {
protected:
    std::string path =
        std::string("/") + testing::UnitTest::GetInstance()->current_test_info()->name();
    Database writer = *Database::open(path, Database::Mode::Write, memoryVfs());

    void SetUp() override { ASSERT_TRUE(writer.run("CREATE TABLE made(number INTEGER) STRICT")); }
    void add(int number)
    {
        ASSERT_TRUE(writer.begin());
        ASSERT_TRUE(writer.execute("INSERT INTO made VALUES(?)", number));
        ASSERT_TRUE(writer.commit());
    }
    static std::int64_t sum(Database& database)
    {
        return *database.integer(0, "SELECT sum(number) FROM made");
    }
    bool isSound()
    {
        return *writer.first([](const ledger::Row& row) { return row.text(0); },
                             "PRAGMA integrity_check") == "ok";
    }
};

}  // namespace

TEST_F(MemoryDatabase, GoesOnFromAnyMomentThatItIsPutBackTo)
{
    add(1);
    const DatabaseImage one = imageOf(path);
    add(10);
    const DatabaseImage two = imageOf(path);
    add(100);
    EXPECT_EQ(sum(writer), 111);
    putBack(path, one);
    EXPECT_EQ(sum(writer), 1);
    add(1000);
    EXPECT_EQ(sum(writer), 1001);
    putBack(path, two);
    EXPECT_EQ(sum(writer), 11);
    ASSERT_TRUE(writer.run("PRAGMA wal_checkpoint(TRUNCATE)"));
    EXPECT_TRUE(imageOf(path).log->empty());
    add(5);
    EXPECT_EQ(sum(writer), 16);
    putBack(path, one);  // from before the checkpoint
    EXPECT_EQ(sum(writer), 1);
    EXPECT_TRUE(isSound());
}

TEST_F(MemoryDatabase, CanBeACopyOfAnother)
{
    add(7);
    auto copy = *Database::open(path + " copy", Database::Mode::Write, memoryVfs());
    putBack(path + " copy", imageOf(path));
    EXPECT_EQ(sum(copy), 7);
    add(8);
    EXPECT_EQ(sum(copy), 7);
}

TEST_F(MemoryDatabase, ShowsAReaderTheMomentWhenItBegan)
{
    add(1);
    auto reader = *Database::open(path, Database::Mode::Read, memoryVfs());
    ASSERT_TRUE(reader.run("BEGIN"));
    EXPECT_EQ(sum(reader), 1);
    add(2);
    EXPECT_EQ(sum(reader), 1);
    EXPECT_FALSE(reader.execute("INSERT INTO made VALUES(3)"));
    ASSERT_TRUE(reader.run("COMMIT"));
    EXPECT_EQ(sum(reader), 3);
}

TEST_F(MemoryDatabase, HasOneWriterAtATime)
{
    auto other = *Database::open(path, Database::Mode::Write, memoryVfs());
    ASSERT_TRUE(other.run("PRAGMA busy_timeout=0"));
    ASSERT_TRUE(writer.begin());
    EXPECT_FALSE(other.begin());
    ASSERT_TRUE(writer.commit());
    EXPECT_TRUE(other.begin());
    ASSERT_TRUE(other.commit());
}

}  // namespace spile::support
