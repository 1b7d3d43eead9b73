#include "platform/system/disk_file_system.hpp"
#include "platform/system/file_key_store.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/memory_file_system.hpp"
#include "tests/support/temp_folder.hpp"

#include <gtest/gtest.h>

namespace spile::system {

static KeySeed seedOf(std::uint8_t first)
{
    std::array<std::uint8_t, KeySeed::size> bytes{};
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        bytes[i] = static_cast<std::uint8_t>(first + i);
    }
    return KeySeed(bytes);
}

TEST(FileKeyStore, HasNoKeyBeforeOneIsSaved)
{
    support::MemoryFileSystem files;
    FileKeyStore keys(files, "/cellar");
    const auto none = keys.load(KeyName::Device);
    ASSERT_TRUE(none.has_value());
    EXPECT_EQ(*none, std::nullopt);
}

TEST(FileKeyStore, KeepsEachKeyPrivateAndApart)
{
    support::MemoryFileSystem files;
    FileKeyStore keys(files, "/cellar");
    ASSERT_TRUE(keys.save(KeyName::Device, seedOf(1)).has_value());
    ASSERT_TRUE(keys.save(KeyName::Owner, seedOf(101)).has_value());
    EXPECT_EQ(keys.load(KeyName::Device), seedOf(1));
    EXPECT_EQ(keys.load(KeyName::Owner), seedOf(101));
    EXPECT_TRUE(files.isPrivate("/cellar/device.key"));
    EXPECT_TRUE(files.isPrivate("/cellar/owner.key"));
    EXPECT_EQ(asText(*readWhole(files, "/cellar/device.key", 100)),
              "0102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f20\n");
}

TEST(FileKeyStore, WritesModeSixHundredOnTheDisk)
{
    const support::TempFolder folder;
    DiskFileSystem disk;
    FileKeyStore keys(disk, folder.path() / "new" / "cellar");
    ASSERT_TRUE(keys.save(KeyName::Device, seedOf(7)).has_value());
    EXPECT_EQ(keys.load(KeyName::Device), seedOf(7));
    const auto status = std::filesystem::status(folder.path() / "new/cellar/device.key");
    EXPECT_EQ(static_cast<int>(status.permissions()), 0600);
    EXPECT_EQ(disk.list(folder.path() / "new/cellar")->size(), 1U);
}

TEST(FileKeyStore, NeverReplacesAKey)
{
    support::MemoryFileSystem files;
    FileKeyStore keys(files, "/cellar");
    ASSERT_TRUE(keys.save(KeyName::Device, seedOf(1)).has_value());
    const auto again = keys.save(KeyName::Device, seedOf(2));
    ASSERT_FALSE(again.has_value());
    EXPECT_EQ(again.error().code, ErrorCode::Conflict);
    EXPECT_EQ(keys.load(KeyName::Device), seedOf(1));
}

TEST(FileKeyStore, RefusesAFileOfAnotherForm)
{
    const std::string good = seedOf(1).hex();
    for (const std::string& text :
         {std::string(), good, good + "\n\n", good + ' ', good.substr(1) + "\n", "0x" + good + '\n',
          'g' + good.substr(1) + '\n', std::string(100'000, '0')}) {
        support::MemoryFileSystem files;
        ASSERT_TRUE(writeWhole(files, "/device.key", asBytes(text)).has_value());
        const auto key = FileKeyStore(files, "/").load(KeyName::Device);
        ASSERT_FALSE(key.has_value()) << text.substr(0, 100);
        EXPECT_EQ(key.error().code, ErrorCode::Damaged);
    }
}

TEST(FileKeyStore, WritesOverWhatAKilledProcessLeft)
{
    support::MemoryFileSystem files;
    ASSERT_TRUE(files.create("/.tmp-device.key").has_value());
    FileKeyStore keys(files, "/");
    ASSERT_TRUE(keys.save(KeyName::Device, seedOf(1)).has_value());
    EXPECT_EQ(keys.load(KeyName::Device), seedOf(1));
}

TEST(FileKeyStore, KeepsASavedKeyThroughALossOfPower)
{
    support::MemoryFileSystem files;
    ASSERT_TRUE(files.makeFolder("/cellar").has_value());
    ASSERT_TRUE(files.syncFolder("/").has_value());
    FileKeyStore keys(files, "/cellar");
    ASSERT_TRUE(keys.save(KeyName::Device, seedOf(1)).has_value());
    files.loseUnsynced();
    EXPECT_EQ(keys.load(KeyName::Device), seedOf(1));
}

// Whatever call fails, and whether or not the power goes with it, there is the whole key or none.
TEST(FileKeyStore, LeavesTheWholeKeyOrNone)
{
    for (std::uint64_t at = 1;; ++at) {
        support::MemoryFileSystem files;
        ASSERT_TRUE(files.makeFolder("/cellar").has_value());
        ASSERT_TRUE(files.syncFolder("/").has_value());
        support::FaultyFileSystem faulty(files);
        faulty.failAt({.at = at, .code = ErrorCode::StorageFull});
        const auto saved = FileKeyStore(faulty, "/cellar").save(KeyName::Device, seedOf(1));
        if (saved) {
            EXPECT_GT(at, 6U);  // all of: make folder, create, append, sync, rename, sync folder
            break;
        }
        EXPECT_EQ(saved.error().code, ErrorCode::StorageFull);
        FileKeyStore after(files, "/cellar");
        for (int power = 0; power < 2; ++power) {
            const auto key = after.load(KeyName::Device);
            ASSERT_TRUE(key.has_value()) << at;
            EXPECT_TRUE(*key == std::nullopt || *key == seedOf(1)) << at;
            EXPECT_FALSE(files.exists("/cellar/.tmp-device.key")) << at;
            files.loseUnsynced();
        }
    }
}

}  // namespace spile::system
