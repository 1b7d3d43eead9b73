#include "core/base/file_system.hpp"

#include "tests/support/faulty_file_system.hpp"
#include "tests/support/memory_file_system.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile {

using support::FaultyFileSystem;
using support::FileCall;
using support::MemoryFileSystem;

TEST(ReadWhole, ReturnsAllBytes)
{
    MemoryFileSystem files;
    ASSERT_TRUE(writeWhole(files, "/a", asBytes("text")).has_value());
    ASSERT_TRUE(writeWhole(files, "/empty", {}).has_value());
    EXPECT_EQ(asText(*readWhole(files, "/a", 4)), "text");
    EXPECT_EQ(readWhole(files, "/empty", 0), Bytes());
}

TEST(ReadWhole, RefusesALargerFileBeforeReadingIt)
{
    MemoryFileSystem files;
    ASSERT_TRUE(writeWhole(files, "/a", asBytes("text")).has_value());
    FaultyFileSystem counting(files);
    const auto bytes = readWhole(counting, "/a", 3);
    ASSERT_FALSE(bytes.has_value());
    EXPECT_EQ(bytes.error(), (Error{ErrorCode::TooLarge, "/a", "4", "3"}));
    EXPECT_EQ(counting.calls(FileCall::Read), 0U);
}

TEST(ReadWhole, PassesErrorsOn)
{
    MemoryFileSystem files;
    EXPECT_EQ(readWhole(files, "/a", 3).error().code, ErrorCode::NotFound);
    ASSERT_TRUE(writeWhole(files, "/a", asBytes("text")).has_value());
    FaultyFileSystem faulty(files);
    faulty.failAt({.call = FileCall::Read});
    EXPECT_EQ(readWhole(faulty, "/a", 4).error().code, ErrorCode::Storage);
}

TEST(WriteWhole, LastsAndLeavesNothingBeside)
{
    MemoryFileSystem files;
    ASSERT_TRUE(writeWhole(files, "/a", asBytes("old")).has_value());
    ASSERT_TRUE(writeWhole(files, "/a", asBytes("new")).has_value());
    files.loseUnsynced();
    EXPECT_EQ(asText(*readWhole(files, "/a", 10)), "new");
    EXPECT_THAT(*files.list("/"), testing::ElementsAre("a"));
}

TEST(WriteWhole, WritesOverWhatAKilledProcessLeft)
{
    MemoryFileSystem files;
    auto left = files.create("/.tmp-a");
    ASSERT_TRUE((*left)->append(asBytes("half")).has_value());
    ASSERT_TRUE(writeWhole(files, "/a", asBytes("whole")).has_value());
    EXPECT_EQ(asText(*readWhole(files, "/a", 10)), "whole");
    EXPECT_THAT(*files.list("/"), testing::ElementsAre("a"));
}

// Whatever call fails, and with it all later ones, as in a process that is killed there.
TEST(WriteWhole, LeavesTheOldOrTheNewFileWhateverFails)
{
    for (std::uint64_t at = 1;; ++at) {
        MemoryFileSystem files;
        ASSERT_TRUE(writeWhole(files, "/a", asBytes("old")).has_value());
        FaultyFileSystem faulty(files);
        faulty.failAt({.at = at, .code = ErrorCode::StorageFull, .lasting = true});
        const auto done = writeWhole(faulty, "/a", asBytes("new"));
        files.loseUnsynced();
        const Bytes left = readWhole(files, "/a", 10).value_or(Bytes());
        if (done) {
            EXPECT_GT(at, 5U);  // create, append, sync, rename, sync of the folder
            EXPECT_EQ(asText(left), "new");
            break;
        }
        EXPECT_EQ(done.error().code, ErrorCode::StorageFull);
        EXPECT_EQ(asText(left), "old");
    }
}

TEST(WriteWhole, TidiesUpAfterAFullDisk)
{
    MemoryFileSystem files;
    FaultyFileSystem faulty(files);
    faulty.failAt({.call = FileCall::Append, .code = ErrorCode::StorageFull});
    EXPECT_EQ(writeWhole(faulty, "/a", asBytes("new")).error().code, ErrorCode::StorageFull);
    EXPECT_TRUE(files.list("/")->empty());
}

}  // namespace spile
