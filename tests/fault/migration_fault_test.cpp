// The disk refuses a call while a cellar of an earlier version is brought up to this one: what is
// in it stays whole, and it is brought up once the disk works again.
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/checking.hpp"
#include "core/ledger/schema.hpp"
#include "tests/fault/recorded_cellar.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/old_store.hpp"

#include <cstdlib>
#include <gmock/gmock.h>
#include <set>

// A connection that failed is left open on purpose: closing it could write.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:libsqlite3"; }

namespace spile::cellar {

using support::FaultyFileSystem;
using support::FileCall;
using support::RecordedDisk;

namespace {

// A cellar that an earlier version left behind, and copies of it on disks that refuse.
class OldCellar {
public:
    explicit OldCellar(int version)
    {
        auto made = device_.newCellar();
        static_cast<void>(support::fillSmallCellar(*made));
        all_ = entriesIn(*made);
        root_ = *stateRoot(*made);
        EXPECT_TRUE(made->database().run(support::backToVersion3));
        if (version < 3) {
            EXPECT_TRUE(made->database().run(support::backToVersion1));
        }
    }

    [[nodiscard]] const Path& folder() const { return device_.folder.path(); }
    [[nodiscard]] std::size_t entries() const { return all_.size(); }
    [[nodiscard]] FileSystem& files() { return device_.files; }
    void pass(std::chrono::days days) { device_.clock.pass(days); }
    void moveLogIntoFile()
    {
        const Path file = folder() / "test.cellar" / "ledger.db";
        auto database = ledger::Database::open(file.string(), ledger::Database::Mode::Write);
        ASSERT_TRUE(database);
        ASSERT_TRUE(database->eachOnce([](const ledger::Row&) { return Result<void>(); },
                                       "PRAGMA wal_checkpoint(TRUNCATE)"));
    }

    [[nodiscard]] Result<std::unique_ptr<Cellar>> open(const Path& folder, FileSystem& files,
                                                       const std::string& vfs = {},
                                                       const Job& job = {})
    {
        return Cellar::open(folder / "test.cellar",
                            {device_.clock, files, device_.random, device_.ids, device_.keys}, vfs,
                            job);
    }

    // What is wrong with what the refusal left in `folder`; empty if nothing.
    [[nodiscard]] std::string wrongWith(const Path& folder)
    {
        auto cellar = open(folder, device_.files);
        if (!cellar) {
            return "it does not open: " + support::textOf(cellar.error());
        }
        ledger::Database& database = (*cellar)->database();
        if (database.integer(0, "PRAGMA user_version") !=
            Result<std::int64_t>(ledger::schemaVersion)) {
            return "it was not brought up to this version";
        }
        if (entriesIn(**cellar) != all_ || stateRoot(**cellar) != Result<Sha256>(root_)) {
            return "it holds other records or another state";
        }
        for (const std::string& name : support::filesUnder(folder)) {
            if (name.find(".tmp-") != std::string::npos) {
                return "a part of a copy was left: " + name;
            }
        }
        if (std::string problems = support::problemsOf(**cellar); !problems.empty()) {
            return problems;
        }
        return registerPlace(**cellar, "Cellar") ? "" : "it does not go on";
    }

private:
    support::TestDevice device_{221};
    std::set<EntryId> all_;
    Sha256 root_;
};

void copyAll(const Path& from, const Path& to)
{
    std::filesystem::copy(from, to,
                          std::filesystem::copy_options::recursive |
                              std::filesystem::copy_options::overwrite_existing);
}

struct Refusals {
    RecordedDisk::Refuse what;
    bool lasting = false;
    bool full = false;
    ErrorCode code = ErrorCode::Storage;
};

// Each call of SQLite's is refused once, each in a cellar of its own; of writes, which are many,
// every seventh, or with SPILE_CRASHES all.
void refuseEach(int version, const Refusals& refusals)
{
    OldCellar old(version);
    const bool every =
        refusals.what == RecordedDisk::Refuse::Sync || std::getenv("SPILE_CRASHES") != nullptr;
    int refused = 0;
    for (std::size_t at = 0;; at += every ? 1 : 7) {
        support::TempFolder folder;
        copyAll(old.folder(), folder.path());
        RecordedDisk disk(folder.path(), old.files());
        disk.refuse(refusals.what, at, refusals.lasting, refusals.full);
        auto opened = old.open(folder.path(), disk.files(), disk.vfs());
        if (!disk.refused()) {
            break;
        }
        ++refused;
        SCOPED_TRACE("call " + std::to_string(at));
        // All was committed already where it could only not be moved out of the log.
        if (!opened) {
            EXPECT_EQ(opened.error().code, refusals.code) << support::textOf(opened.error());
        } else {
            EXPECT_TRUE((*opened)->database().isBroken()) << "nobody was told";
            opened->reset();
        }
        if (refusals.full) {  // the program goes on, where somebody makes room
            EXPECT_EQ(old.wrongWith(folder.path()), "");
        } else {
            support::TempFolder after;  // another process
            copyAll(folder.path(), after.path());
            EXPECT_EQ(old.wrongWith(after.path()), "");
        }
        if (testing::Test::HasFailure()) {
            return;
        }
    }
    EXPECT_GE(refused, refusals.what == RecordedDisk::Refuse::Sync ? 3 : 10);
}

std::vector<std::string> copiesIn(const Path& folder)
{
    auto names = support::filesUnder(folder / "test.cellar");
    std::erase_if(
        names, [](const std::string& name) { return name.find("ledger-v") == std::string::npos; });
    return names;
}

}  // namespace

TEST(Fault69_DiskRefusesInAMigration, FullFromThenOn)
{
    refuseEach(3, {RecordedDisk::Refuse::Write, true, true, ErrorCode::StorageFull});
    refuseEach(1, {RecordedDisk::Refuse::Write, true, true, ErrorCode::StorageFull});
}

TEST(Fault69_DiskRefusesInAMigration, FullForOneCall)
{
    refuseEach(3, {RecordedDisk::Refuse::Write, false, true, ErrorCode::StorageFull});
}

TEST(Fault69_DiskRefusesInAMigration, AWrite)
{
    refuseEach(3, {RecordedDisk::Refuse::Write});
    refuseEach(1, {RecordedDisk::Refuse::Write, true});
}

TEST(Fault69_DiskRefusesInAMigration, ASync)
{
    refuseEach(3, {RecordedDisk::Refuse::Sync});
    refuseEach(1, {RecordedDisk::Refuse::Sync, true});
}

// The copy that is kept of the old store is written by other calls than SQLite's.
TEST(Fault69_DiskRefusesInAMigration, EachCallForTheCopy)
{
    OldCellar old(3);
    for (const FileCall call : {FileCall::Open, FileCall::Read, FileCall::Create, FileCall::Append,
                                FileCall::Sync, FileCall::Rename, FileCall::Remove,
                                FileCall::SyncFolder, FileCall::List, FileCall::Lock}) {
        for (std::uint64_t at = 1;; ++at) {
            support::TempFolder folder;
            copyAll(old.folder(), folder.path());
            FaultyFileSystem files(old.files());
            files.failAt({.call = call, .at = at, .code = ErrorCode::StorageFull, .lasting = true});
            const bool opened = old.open(folder.path(), files).has_value();
            if (opened) {
                break;
            }
            SCOPED_TRACE(std::to_string(static_cast<int>(call)) + ' ' + std::to_string(at));
            ASSERT_EQ(old.wrongWith(folder.path()), "");
        }
    }
}

// Else each attempt would take the room that was made for it.
TEST(Fault69_DiskRefusesInAMigration, AttemptsThatFailKeepOneCopy)
{
    OldCellar old(3);
    old.moveLogIntoFile();
    for (int day = 0; day < 3; ++day) {
        RecordedDisk disk(old.folder(), old.files());
        FaultyFileSystem files(disk.files());
        disk.refuse(RecordedDisk::Refuse::Write, 20, true, true);
        const auto refused = old.open(old.folder(), files, disk.vfs());
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::StorageFull);
        EXPECT_THAT(copiesIn(old.folder()), testing::SizeIs(1));
        EXPECT_EQ(files.calls(FileCall::Append) > 0, day == 0) << "it is copied once";
        old.pass(std::chrono::days(1));
    }
    EXPECT_EQ(old.wrongWith(old.folder()), "");
    EXPECT_THAT(copiesIn(old.folder()),
                testing::ElementsAre(testing::HasSubstr("ledger-v3-2025-09-04.db")));
}

TEST(Fault69_DiskRefusesInAMigration, IsStoppedWhereItIsAskedTo)
{
    OldCellar old(3);
    int reports = 0;
    for (int stopAt = 1;; ++stopAt) {
        CancelToken stop;
        reports = 0;
        const Job job(
            [&](std::uint64_t done, std::uint64_t total) {
                EXPECT_LE(done, total);
                if (++reports == stopAt) {
                    stop.cancel();
                }
            },
            &stop);
        const auto stopped = old.open(old.folder(), old.files(), {}, job);
        if (stopped) {
            break;
        }
        EXPECT_EQ(stopped.error().code, ErrorCode::Cancelled);
        support::TempFolder after;
        copyAll(old.folder(), after.path());
        EXPECT_EQ(old.wrongWith(after.path()), "");
    }
    EXPECT_GE(reports, 2);  // before the copy, and while the entries come into the new table
}

// The process was killed while it wrote its copy, and starts again on another day.
TEST(Fault69_DiskRefusesInAMigration, APartOfACopyIsRemovedWhenItIsStartedAgain)
{
    OldCellar old(3);
    const Path part = old.folder() / "test.cellar" / ".tmp-ledger-v3-2025-08-30.db";
    ASSERT_TRUE(writeWhole(old.files(), part, Bytes(1000)));
    FaultyFileSystem full(old.files());
    full.failAt({.call = FileCall::Append, .code = ErrorCode::StorageFull});
    ASSERT_FALSE(old.open(old.folder(), full));
    EXPECT_FALSE(old.files().exists(part)) << "its room is there for the next";
    EXPECT_EQ(old.wrongWith(old.folder()), "");
}

}  // namespace spile::cellar
