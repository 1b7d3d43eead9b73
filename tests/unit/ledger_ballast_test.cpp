// The room that is kept for a full disk: whole or not there, and never what fills the disk.
#include "core/base/simulated.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/ledger/ballast.hpp"
#include "core/ledger/photo_store.hpp"
#include "tests/support/counting_vfs.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/test_device.hpp"

#include <gtest/gtest.h>

// A connection that failed is left open on purpose: closing it could write.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:libsqlite3"; }

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

TEST_F(Ballast, IsForRecordsAndNotForPhotosOrFilesElsewhere)
{
    bool full = false;
    support::VfsCounter& counter = support::registerCountingVfs();  // before any cellar
    counter.fillDisk([&] { return full; });
    support::TestDevice device(9);
    const auto cellar = device.newCellar();
    full = true;
    const auto record = cellar::registerPerson(*cellar, "Ada");
    full = false;
    counter.fillDisk({});
    ASSERT_FALSE(record);
    EXPECT_TRUE(ballastHelps(record.error())) << record.error().subject;
    support::FaultyFileSystem stick(disk);
    stick.failAt({support::FileCall::Append, 1, ErrorCode::StorageFull});
    const auto elsewhere = writeWhole(stick, folder.path() / "day.spile", Bytes(100));
    ASSERT_FALSE(elsewhere);
    EXPECT_EQ(elsewhere.error().code, ErrorCode::StorageFull);
    EXPECT_FALSE(ballastHelps(elsewhere.error()));
    stick.setFree(ballastBytes);
    const auto photo = PhotoStore(stick, folder.path()).add(Bytes(100));
    ASSERT_FALSE(photo);
    EXPECT_FALSE(ballastHelps(photo.error()));
}

}  // namespace spile::ledger
