#include "platform/system/descriptor.hpp"
#include "tests/support/temp_folder.hpp"

#include <cerrno>
#include <fcntl.h>
#include <gtest/gtest.h>

namespace spile::system {

static ErrorCode meaningOf(int systemError)
{
    const Result<void> result = failOn("a", systemError);
    return result.error().code;
}

TEST(Descriptor, TellsApartWhatACallerActsOn)
{
    EXPECT_EQ(meaningOf(ENOSPC), ErrorCode::StorageFull);
    EXPECT_EQ(meaningOf(EDQUOT), ErrorCode::StorageFull);
    EXPECT_EQ(meaningOf(ENOENT), ErrorCode::NotFound);
    EXPECT_EQ(meaningOf(EEXIST), ErrorCode::Conflict);
    EXPECT_EQ(meaningOf(ENOTEMPTY), ErrorCode::Conflict);
    EXPECT_EQ(meaningOf(EIO), ErrorCode::Storage);
    const Result<void> result = failOn("a/b", EIO);
    EXPECT_EQ(result.error().subject, "a/b");
    EXPECT_EQ(result.error().value, "Input/output error");
}

TEST(Descriptor, ReportsAFullDisk)
{
    const auto full = Descriptor::open("/dev/full", O_WRONLY);
    ASSERT_TRUE(full.has_value());
    const auto done = full->write(asBytes("text"));
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().code, ErrorCode::StorageFull);
}

TEST(Descriptor, WritesAndReadsInFull)
{
    const support::TempFolder folder;
    auto file = Descriptor::open(folder.path() / "a", O_RDWR | O_CREAT, 0600);
    ASSERT_TRUE(file.has_value());
    Bytes bytes(3'000'000);
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        bytes[i] = static_cast<std::uint8_t>(i * 7);
    }
    ASSERT_TRUE(file->write(bytes).has_value());
    Bytes back(bytes.size() + 10);
    EXPECT_EQ(file->readAt(0, back), bytes.size());
    back.resize(bytes.size());
    EXPECT_EQ(back, bytes);
    EXPECT_EQ(file->fileSize(), bytes.size());
    ASSERT_TRUE(file->truncate().has_value());
    EXPECT_EQ(file->fileSize(), 0U);
}

TEST(Descriptor, IsClosedOnceAndMovesItsFile)
{
    const support::TempFolder folder;
    auto first = Descriptor::open(folder.path() / "a", O_RDWR | O_CREAT, 0600);
    auto second = Descriptor::open(folder.path() / "a", O_RDWR);
    ASSERT_TRUE(first.has_value() && second.has_value());
    EXPECT_EQ(first->tryLock(), true);
    EXPECT_EQ(second->tryLock(), false);
    {
        const Descriptor moved = std::move(*first);
        EXPECT_EQ(second->tryLock(), false);
    }
    EXPECT_EQ(second->tryLock(), true);
}

}  // namespace spile::system
