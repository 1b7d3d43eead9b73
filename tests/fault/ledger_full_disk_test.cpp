// A connection that found the disk full: it says so to all that comes after, and leaves the lock to
// the one that is opened in its place.
#include "core/ledger/database.hpp"
#include "tests/support/counting_vfs.hpp"
#include "tests/support/temp_folder.hpp"

#include <gtest/gtest.h>

// A connection that failed is left open on purpose: closing it could write.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:libsqlite3"; }

namespace spile::ledger {

namespace {

class Fault08_FullConnection : public testing::Test {
protected:
    Fault08_FullConnection()
    {
        support::registerCountingVfs().fillDisk([this] { return full; });
        database = opened();
        EXPECT_TRUE(database->run("CREATE TABLE t(b BLOB NOT NULL)"));
    }
    ~Fault08_FullConnection() override { support::registerCountingVfs().fillDisk({}); }

    [[nodiscard]] std::optional<Database> opened() const
    {
        auto made = Database::open((folder.path() / "ledger.db").string(), Database::Mode::Write,
                                   "counting");
        EXPECT_TRUE(made) << made.error().value;
        return std::optional(std::move(*made));
    }
    // Of many rows at once, which SQLite undoes by themselves and not with all that is open.
    [[nodiscard]] Result<void> insertMuch()
    {
        return database->run(
            "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 500) "
            "INSERT INTO t SELECT randomblob(4000) FROM n");
    }

    support::TempFolder folder;
    std::optional<Database> database;
    bool full = false;
};

}  // namespace

TEST_F(Fault08_FullConnection, LeavesTheLockToTheNext)
{
    ASSERT_TRUE(database->run("PRAGMA cache_size=10"));  // so that it writes before the commit
    {
        auto transaction = Transaction::begin(*database);
        ASSERT_TRUE(transaction);
        full = true;
        const auto refused = insertMuch();
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::StorageFull);
        EXPECT_TRUE(database->isBroken());
    }
    full = false;
    auto next = opened();
    const auto written = next->run("INSERT INTO t VALUES(x'00')");
    EXPECT_TRUE(written) << written.error().value;
    EXPECT_EQ(next->integer(0, "SELECT count(*) FROM t").value_or(-1), 1);
}

TEST_F(Fault08_FullConnection, SaysSoAfterACheckpointFoundNoRoom)
{
    auto transaction = Transaction::begin(*database);
    ASSERT_TRUE(transaction && insertMuch());
    ASSERT_TRUE(transaction->commit());
    full = true;
    EXPECT_FALSE(database->checkpoint(0));
    const auto refused = database->run("INSERT INTO t VALUES(x'00')");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::StorageFull);
    EXPECT_EQ(opened()->integer(0, "SELECT count(*) FROM t").value_or(-1), 500);
}

}  // namespace spile::ledger
