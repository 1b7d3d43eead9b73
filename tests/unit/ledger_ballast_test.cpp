// The room that is kept for a full disk: whole or not there, and never what fills the disk.
#include "core/base/simulated.hpp"
#include "core/ledger/ballast.hpp"
#include "platform/system/disk_file_system.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/temp_folder.hpp"

#include <gtest/gtest.h>

namespace spile::ledger {

namespace {

class SmallDisk final : public FileSystem {
public:
    explicit SmallDisk(std::uint64_t free) : free_(free) {}
    Result<std::unique_ptr<InputFile>> open(const Path& path) override { return disk_.open(path); }
    Result<std::unique_ptr<OutputFile>> create(const Path& path) override
    {
        return disk_.create(path);
    }
    Result<std::unique_ptr<OutputFile>> createPrivate(const Path& path) override
    {
        return disk_.createPrivate(path);
    }
    Result<void> rename(const Path& from, const Path& to) override
    {
        return disk_.rename(from, to);
    }
    Result<void> remove(const Path& path) override { return disk_.remove(path); }
    Result<void> makeFolder(const Path& path) override { return disk_.makeFolder(path); }
    Result<void> syncFolder(const Path& path) override { return disk_.syncFolder(path); }
    bool exists(const Path& path) override { return disk_.exists(path); }
    Result<std::vector<std::string>> list(const Path& folder) override
    {
        return disk_.list(folder);
    }
    Result<std::unique_ptr<FileLock>> lock(const Path& path, const std::string& holder) override
    {
        return disk_.lock(path, holder);
    }
    Result<std::uint64_t> freeBytes(const Path& /*folder*/) override { return free_; }

private:
    system::DiskFileSystem disk_;
    std::uint64_t free_;
};

class Ballast : public testing::Test {
protected:
    support::TempFolder folder;
    SeededRandom random{1};
    system::DiskFileSystem disk;

    std::vector<std::string> names() { return *disk.list(folder.path()); }
};

}  // namespace

TEST_F(Ballast, IsWrittenInFullOnceAndGivenUp)
{
    ASSERT_TRUE(keepBallast(disk, random, folder.path()));
    EXPECT_EQ(names(), (std::vector<std::string>{"ballast"}));
    EXPECT_EQ(std::filesystem::file_size(folder.path() / "ballast"), ballastBytes);
    const auto written = std::filesystem::last_write_time(folder.path() / "ballast");
    ASSERT_TRUE(keepBallast(disk, random, folder.path()));
    EXPECT_EQ(std::filesystem::last_write_time(folder.path() / "ballast"), written);
    EXPECT_TRUE(giveUpBallast(disk, folder.path()));
    EXPECT_FALSE(giveUpBallast(disk, folder.path()));
    EXPECT_TRUE(names().empty());
}

TEST_F(Ballast, IsNotMadeWhereLittleIsFree)
{
    SmallDisk small(freeForBallast - 1);
    ASSERT_TRUE(keepBallast(small, random, folder.path()));
    EXPECT_TRUE(names().empty());
    SmallDisk enough(freeForBallast);
    ASSERT_TRUE(keepBallast(enough, random, folder.path()));
    EXPECT_EQ(names().size(), 1U);
}

TEST_F(Ballast, LeavesNothingWhenItIsRefusedOrStopped)
{
    support::FaultyFileSystem faulty(disk);
    faulty.failAt({support::FileCall::Append, 3, ErrorCode::StorageFull});
    EXPECT_TRUE(keepBallast(faulty, random, folder.path())) << "no room is no error";
    EXPECT_TRUE(names().empty());
    faulty.failAt({support::FileCall::Append, 3, ErrorCode::Storage});
    EXPECT_FALSE(keepBallast(faulty, random, folder.path()));
    EXPECT_TRUE(names().empty());
    CancelToken cancel;
    cancel.cancel();
    EXPECT_EQ(keepBallast(disk, random, folder.path(), Job({}, &cancel)).error().code,
              ErrorCode::Cancelled);
    EXPECT_TRUE(names().empty());
}

TEST_F(Ballast, OfAProcessThatWasKilledIsRemovedAndMadeAnew)
{
    ASSERT_TRUE(writeWhole(disk, folder.path() / "ballast.new", Bytes(100)));
    ASSERT_TRUE(keepBallast(disk, random, folder.path()));
    EXPECT_EQ(names(), (std::vector<std::string>{"ballast"}));
}

}  // namespace spile::ledger
