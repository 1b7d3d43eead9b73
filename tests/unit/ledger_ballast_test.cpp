// The room that is kept for a full disk: whole or not there, and never what fills the disk.
#include "core/base/simulated.hpp"
#include "core/ledger/ballast.hpp"
#include "platform/system/disk_file_system.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/temp_folder.hpp"

#include <gtest/gtest.h>

namespace spile::ledger {

namespace {

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
    support::FaultyFileSystem small(disk);
    small.setFree(freeForBallast - 1);
    ASSERT_TRUE(keepBallast(small, random, folder.path()));
    EXPECT_TRUE(names().empty());
    small.setFree(freeForBallast);
    ASSERT_TRUE(keepBallast(small, random, folder.path()));
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
