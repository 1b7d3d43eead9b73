#include "tests/support/counting_vfs.hpp"
#include "tests/support/temp_folder.hpp"

#include <array>
#include <gtest/gtest.h>
#include <memory>
#include <sqlite3.h>

namespace spile::support {

using Database = std::unique_ptr<sqlite3, decltype(&sqlite3_close)>;

static Database openDatabase(const Path& path)
{
    sqlite3* raw = nullptr;
    EXPECT_EQ(sqlite3_open(path.c_str(), &raw), SQLITE_OK);
    return {raw, sqlite3_close};
}

static void run(const Database& database, const char* sql)
{
    ASSERT_EQ(sqlite3_exec(database.get(), sql, nullptr, nullptr, nullptr), SQLITE_OK)
        << sql << ": " << sqlite3_errmsg(database.get());
}

static int countRows(const Database& database)
{
    int rows = -1;
    const auto take = [](void* into, int, char** values, char**) {
        *static_cast<int*>(into) = std::atoi(values[0]);
        return 0;
    };
    EXPECT_EQ(sqlite3_exec(database.get(), "SELECT count(*) FROM t", take, &rows, nullptr),
              SQLITE_OK);
    return rows;
}

class CountingVfsTest : public testing::Test {
protected:
    CountingVfsTest() { counter_.reset(); }

    VfsCounter& counter_ = registerCountingVfs();
    TempFolder folder_;
};

TEST_F(CountingVfsTest, SeesTheSyncOfACommitWithFullInWal)
{
    const Database database = openDatabase(folder_.path() / "a.db");
    run(database, "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; CREATE TABLE t(x)");
    counter_.reset();
    run(database, "INSERT INTO t VALUES(1)");
    EXPECT_EQ(counter_.syncs("-wal"), 1U);
    EXPECT_EQ(counter_.syncs(), 1U);
    EXPECT_GE(counter_.writes("-wal"), 1U);
    EXPECT_EQ(counter_.writes(".db"), 0U);
    run(database, "PRAGMA wal_checkpoint(TRUNCATE)");
    EXPECT_GE(counter_.writes(".db"), 1U);
}

TEST_F(CountingVfsTest, SeesNoSyncWithOff)
{
    const Database database = openDatabase(folder_.path() / "a.db");
    run(database, "PRAGMA journal_mode=WAL; PRAGMA synchronous=OFF; CREATE TABLE t(x)");
    counter_.reset();
    run(database, "INSERT INTO t VALUES(1)");
    EXPECT_EQ(counter_.syncs(), 0U);
    EXPECT_GE(counter_.writes("-wal"), 1U);
}

TEST_F(CountingVfsTest, CountsOpensByFile)
{
    counter_.reset();
    const Database database = openDatabase(folder_.path() / "a.db");
    run(database, "PRAGMA journal_mode=WAL; CREATE TABLE t(x)");
    EXPECT_EQ(counter_.opens(".db"), 1U);
    EXPECT_EQ(counter_.opens("-wal"), 1U);
    EXPECT_EQ(counter_.opens(".other"), 0U);
}

TEST_F(CountingVfsTest, LetsTwoConnectionsShareALogAndADatabaseBeReadBack)
{
    const Path path = folder_.path() / "a.db";
    {
        const Database writer = openDatabase(path);
        run(writer, "PRAGMA journal_mode=WAL; CREATE TABLE t(x); INSERT INTO t VALUES(1)");
        const Database reader = openDatabase(path);
        EXPECT_EQ(countRows(reader), 1);
        run(writer, "INSERT INTO t VALUES(2)");
        EXPECT_EQ(countRows(reader), 2);
    }
    const Database again = openDatabase(path);
    EXPECT_EQ(countRows(again), 2);
    run(again, "PRAGMA journal_mode=DELETE; INSERT INTO t VALUES(3)");
    EXPECT_EQ(countRows(again), 3);
}

TEST_F(CountingVfsTest, PassesARefusalToOpenThrough)
{
    sqlite3* raw = nullptr;
    const Path nowhere = folder_.path() / "missing" / "a.db";
    EXPECT_EQ(sqlite3_open_v2(nowhere.c_str(), &raw, SQLITE_OPEN_READONLY, nullptr),
              SQLITE_CANTOPEN);
    sqlite3_close(raw);
}

TEST_F(CountingVfsTest, IsOneLayerHoweverOftenItIsRegistered)
{
    EXPECT_EQ(&registerCountingVfs(), &counter_);
    EXPECT_STREQ(sqlite3_vfs_find(nullptr)->zName, "counting");
    const Database database = openDatabase(folder_.path() / "a.db");
    EXPECT_EQ(counter_.opens("a.db"), 1U);
}

}  // namespace spile::support
