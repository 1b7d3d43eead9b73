#include "platform/system/disk_file_system.hpp"
#include "tests/support/temp_folder.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

namespace spile::system {

class DiskFileSystemTest : public testing::Test {
protected:
    [[nodiscard]] Path inside(const char* name) const { return folder_.path() / name; }

    void write(const Path& path, std::string_view text)
    {
        auto file = disk_.create(path);
        ASSERT_TRUE(file.has_value());
        ASSERT_TRUE((*file)->append(asBytes(text)).has_value());
        ASSERT_TRUE((*file)->sync().has_value());
    }
    [[nodiscard]] std::string read(const Path& path)
    {
        auto bytes = readWhole(disk_, path, 1U << 20U);
        return bytes ? std::string(asText(*bytes)) : "no such file";
    }
    static bool isPrivate(const Path& path)
    {
        using std::filesystem::perms;
        return std::filesystem::status(path).permissions() ==
               (perms::owner_read | perms::owner_write);
    }

    DiskFileSystem disk_;

private:
    support::TempFolder folder_;
};

TEST_F(DiskFileSystemTest, ReadsBackWhatItAppended)
{
    auto file = disk_.create(inside("a"));
    ASSERT_TRUE(file.has_value());
    ASSERT_TRUE((*file)->append(asBytes("barrel ")).has_value());
    ASSERT_TRUE((*file)->append(asBytes("seven")).has_value());
    ASSERT_TRUE((*file)->append({}).has_value());
    EXPECT_EQ(read(inside("a")), "barrel seven");
}

TEST_F(DiskFileSystemTest, ReadsFromAnyPlace)
{
    write(inside("a"), "0123456789");
    auto file = disk_.open(inside("a"));
    ASSERT_TRUE(file.has_value());
    EXPECT_EQ((*file)->size(), 10U);
    std::array<std::uint8_t, 3> three{};
    ASSERT_TRUE((*file)->readAt(7, three).has_value());
    EXPECT_EQ(asText(three), "789");
    ASSERT_TRUE((*file)->readAt(0, three).has_value());
    EXPECT_EQ(asText(three), "012");
}

TEST_F(DiskFileSystemTest, SaysThatAFileEndsTooEarly)
{
    write(inside("a"), "0123456789");
    auto file = disk_.open(inside("a"));
    ASSERT_TRUE(file.has_value());
    std::array<std::uint8_t, 3> three{};
    for (const std::uint64_t offset : {std::uint64_t{8}, std::uint64_t{10}, ~std::uint64_t{0}}) {
        const auto done = (*file)->readAt(offset, three);
        ASSERT_FALSE(done.has_value()) << offset;
        EXPECT_EQ(done.error().code, ErrorCode::Damaged);
    }
}

TEST_F(DiskFileSystemTest, NeverWritesOverAFile)
{
    write(inside("a"), "first");
    for (const auto& again : {disk_.create(inside("a")).map([](auto&&) {}),
                              disk_.createPrivate(inside("a")).map([](auto&&) {})}) {
        ASSERT_FALSE(again.has_value());
        EXPECT_EQ(again.error().code, ErrorCode::Conflict);
        EXPECT_EQ(again.error().subject, inside("a").string());
    }
    EXPECT_EQ(read(inside("a")), "first");
}

TEST_F(DiskFileSystemTest, KeepsPrivateFilesFromOthers)
{
    ASSERT_TRUE(disk_.createPrivate(inside("secret")).has_value());
    ASSERT_TRUE(disk_.create(inside("open")).has_value());
    EXPECT_TRUE(isPrivate(inside("secret")));
    EXPECT_FALSE(isPrivate(inside("open")));
}

TEST_F(DiskFileSystemTest, SaysWhatIsNotThere)
{
    const Path missing = inside("missing");
    EXPECT_EQ(disk_.open(missing).error().code, ErrorCode::NotFound);
    EXPECT_EQ(disk_.create(missing / "a").error().code, ErrorCode::NotFound);
    EXPECT_EQ(disk_.rename(missing, inside("b")).error().code, ErrorCode::NotFound);
    EXPECT_EQ(disk_.remove(missing).error().code, ErrorCode::NotFound);
    EXPECT_EQ(disk_.syncFolder(missing).error().code, ErrorCode::NotFound);
    EXPECT_EQ(disk_.list(missing).error().code, ErrorCode::NotFound);
    EXPECT_EQ(disk_.lock(missing / "lock", "x").error().code, ErrorCode::NotFound);
    EXPECT_FALSE(disk_.exists(missing));
}

TEST_F(DiskFileSystemTest, OpensOnlyPlainFilesAndWaitsForNoPipe)
{
    ASSERT_EQ(::mkfifo(inside("pipe").c_str(), 0600), 0);
    EXPECT_EQ(disk_.open(inside("pipe")).error().code, ErrorCode::Storage);
    EXPECT_EQ(disk_.open(inside("pipe").parent_path()).error().code, ErrorCode::Storage);
}

TEST_F(DiskFileSystemTest, RenamesOverTheOldFile)
{
    write(inside("old"), "old");
    write(inside("new"), "new");
    ASSERT_TRUE(disk_.rename(inside("new"), inside("old")).has_value());
    ASSERT_TRUE(disk_.syncFolder(inside("old").parent_path()).has_value());
    EXPECT_EQ(read(inside("old")), "new");
    EXPECT_FALSE(disk_.exists(inside("new")));
}

TEST_F(DiskFileSystemTest, ListsNamesInOrder)
{
    ASSERT_TRUE(disk_.makeFolder(inside("f/deep")).has_value());
    ASSERT_TRUE(disk_.makeFolder(inside("f/deep")).has_value());
    write(inside("f/b"), "");
    write(inside("f/a"), "");
    EXPECT_THAT(*disk_.list(inside("f")), testing::ElementsAre("a", "b", "deep"));
    ASSERT_TRUE(disk_.remove(inside("f/a")).has_value());
    EXPECT_THAT(*disk_.list(inside("f")), testing::ElementsAre("b", "deep"));
    EXPECT_EQ(disk_.remove(inside("f")).error().code, ErrorCode::Conflict);
    EXPECT_EQ(disk_.makeFolder(inside("f/b")).error().code, ErrorCode::Storage);
}

TEST_F(DiskFileSystemTest, SyncsTheFolderOfABareName)
{
    EXPECT_TRUE(disk_.syncFolder(Path("bare").parent_path()).has_value());
}

TEST_F(DiskFileSystemTest, RefusesASecondHolderByTheNameOfTheFirst)
{
    auto first = disk_.lock(inside("lock"), "the app,\nby the barrels");
    ASSERT_TRUE(first.has_value());
    auto second = disk_.lock(inside("lock"), "desk");
    ASSERT_FALSE(second.has_value());
    EXPECT_EQ(second.error().code, ErrorCode::Locked);
    EXPECT_EQ(second.error().value, "the app,\nby the barrels");
    EXPECT_EQ(second.error().limit,
              "close it there first (process " + std::to_string(::getpid()) + ")");

    first->reset();
    EXPECT_TRUE(disk_.lock(inside("lock"), "desk").has_value());
    EXPECT_EQ(read(inside("lock")), "desk\nprocess " + std::to_string(::getpid()) + '\n');
}

}  // namespace spile::system
