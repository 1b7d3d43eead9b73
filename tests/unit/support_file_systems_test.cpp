#include "tests/support/faulty_file_system.hpp"
#include "tests/support/memory_file_system.hpp"
#include "tests/support/memory_key_store.hpp"
#include "tests/support/temp_folder.hpp"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::support {

static std::string contents(FileSystem& files, const Path& path)
{
    auto bytes = readWhole(files, path, 1000);
    return bytes ? std::string(asText(*bytes)) : "none";
}

static void write(FileSystem& files, const Path& path, std::string_view text, bool synced)
{
    auto file = files.create(path);
    ASSERT_TRUE(file.has_value());
    ASSERT_TRUE((*file)->append(asBytes(text)).has_value());
    if (synced) {
        ASSERT_TRUE((*file)->sync().has_value());
        ASSERT_TRUE(files.syncFolder(path.parent_path()).has_value());
    }
}

TEST(MemoryFileSystem, LosesWhatWasNotSynced)
{
    MemoryFileSystem files;
    auto file = files.create("/a");
    ASSERT_TRUE(file.has_value());
    ASSERT_TRUE((*file)->append(asBytes("kept")).has_value());
    ASSERT_TRUE((*file)->sync().has_value());
    ASSERT_TRUE(files.syncFolder("/").has_value());
    ASSERT_TRUE((*file)->append(asBytes(" and lost")).has_value());
    EXPECT_EQ(contents(files, "/a"), "kept and lost");
    files.loseUnsynced();
    EXPECT_EQ(contents(files, "/a"), "kept");
}

TEST(MemoryFileSystem, LosesAFileWhoseFolderWasNotSynced)
{
    MemoryFileSystem files;
    auto file = files.create("/a");
    ASSERT_TRUE((*file)->append(asBytes("text")).has_value());
    ASSERT_TRUE((*file)->sync().has_value());
    files.loseUnsynced();
    EXPECT_FALSE(files.exists("/a"));
}

TEST(MemoryFileSystem, ForgetsARenameWithoutSyncOfTheFolder)
{
    for (const bool synced : {false, true}) {
        MemoryFileSystem files;
        write(files, "/old", "old", true);
        write(files, "/new", "new", true);
        ASSERT_TRUE(files.rename("/new", "/old").has_value());
        EXPECT_EQ(contents(files, "/old"), "new");
        if (synced) {
            ASSERT_TRUE(files.syncFolder("/").has_value());
        }
        files.loseUnsynced();
        EXPECT_EQ(contents(files, "/old"), synced ? "new" : "old");
        EXPECT_EQ(contents(files, "/new"), synced ? "none" : "new");
    }
}

TEST(MemoryFileSystem, BringsBackWhatWasRemovedWithoutSync)
{
    MemoryFileSystem files;
    write(files, "/a", "text", true);
    ASSERT_TRUE(files.remove("/a").has_value());
    EXPECT_FALSE(files.exists("/a"));
    files.loseUnsynced();
    EXPECT_EQ(contents(files, "/a"), "text");
}

TEST(MemoryFileSystem, LosesAFolderWhoseParentWasNotSynced)
{
    MemoryFileSystem files;
    ASSERT_TRUE(files.makeFolder("/a/b").has_value());
    ASSERT_TRUE(files.syncFolder("/a").has_value());
    files.loseUnsynced();
    EXPECT_FALSE(files.exists("/a"));
}

TEST(MemoryFileSystem, RefusesAsADiskDoes)
{
    MemoryFileSystem files;
    ASSERT_TRUE(files.makeFolder("/f").has_value());
    write(files, "/f/b", "b", false);
    write(files, "/f/a", "a", false);
    EXPECT_THAT(*files.list("/f"), testing::ElementsAre("a", "b"));
    EXPECT_EQ(files.create("/f/a").error().code, ErrorCode::Conflict);
    EXPECT_EQ(files.create("/g/a").error().code, ErrorCode::NotFound);
    EXPECT_EQ(files.open("/f/c").error().code, ErrorCode::NotFound);
    EXPECT_EQ(files.open("/f").error().code, ErrorCode::Storage);
    EXPECT_EQ(files.rename("/f/c", "/f/a").error().code, ErrorCode::NotFound);
    EXPECT_EQ(files.rename("/f/a", "/g/a").error().code, ErrorCode::NotFound);
    EXPECT_EQ(files.remove("/f").error().code, ErrorCode::Conflict);
    EXPECT_EQ(files.list("/g").error().code, ErrorCode::NotFound);
    EXPECT_EQ(files.makeFolder("/f/a").error().code, ErrorCode::Storage);
    std::array<std::uint8_t, 2> two{};
    EXPECT_EQ((*files.open("/f/a"))->readAt(0, two).error().code, ErrorCode::Damaged);
}

TEST(MemoryFileSystem, HoldsALockUntilItsEndOrALossOfPower)
{
    MemoryFileSystem files;
    auto first = files.lock("/lock", "app");
    ASSERT_TRUE(first.has_value());
    auto second = files.lock("/lock", "desk");
    ASSERT_FALSE(second.has_value());
    EXPECT_EQ(second.error().code, ErrorCode::Locked);
    EXPECT_EQ(second.error().value, "app");
    first->reset();
    EXPECT_TRUE(files.lock("/lock", "desk").has_value());

    auto third = files.lock("/lock", "app");
    ASSERT_TRUE(files.syncFolder("/").has_value());
    files.loseUnsynced();
    EXPECT_TRUE(files.lock("/lock", "desk").has_value());
}

TEST(FaultyFileSystem, RefusesOnlyTheCallThatWasChosen)
{
    MemoryFileSystem files;
    FaultyFileSystem faulty(files);
    faulty.failAt({.call = FileCall::Create, .at = 2, .code = ErrorCode::StorageFull});
    EXPECT_TRUE(faulty.create("/a").has_value());
    EXPECT_TRUE(faulty.open("/a").has_value());
    EXPECT_EQ(faulty.create("/b").error().code, ErrorCode::StorageFull);
    EXPECT_FALSE(files.exists("/b"));
    EXPECT_TRUE(faulty.create("/b").has_value());
    EXPECT_EQ(faulty.calls(FileCall::Create), 3U);
    EXPECT_EQ(faulty.calls(), 4U);

    faulty.failAt({.at = 1, .lasting = true});
    EXPECT_EQ(faulty.list("/").error().code, ErrorCode::Storage);
    EXPECT_EQ(faulty.remove("/a").error().code, ErrorCode::Storage);
    faulty.failNever();
    EXPECT_TRUE(faulty.remove("/a").has_value());
}

TEST(FaultyFileSystem, WritesHalfOfARefusedAppend)
{
    MemoryFileSystem files;
    FaultyFileSystem faulty(files);
    auto file = faulty.create("/a");
    ASSERT_TRUE(file.has_value());
    faulty.failAt({.call = FileCall::Append});
    EXPECT_EQ((*file)->append(asBytes("abcdef")).error().code, ErrorCode::Storage);
    EXPECT_EQ(contents(files, "/a"), "abc");
}

TEST(FaultyFileSystem, CanRefuseEveryKindOfCall)
{
    MemoryFileSystem files;
    FaultyFileSystem faulty(files);
    auto out = faulty.create("/a");
    auto in = faulty.open("/a");
    for (std::size_t kind = 0; kind < fileCallKinds; ++kind) {
        SCOPED_TRACE(kind);
        faulty.failAt({.call = static_cast<FileCall>(kind), .at = 1, .lasting = true});
        int refused = 0;
        const auto note = [&](const auto& result) { refused += result.has_value() ? 0 : 1; };
        note(faulty.open("/a"));
        note((*in)->readAt(0, {}));
        note(faulty.create("/" + std::to_string(kind)));
        note((*out)->append({}));
        note((*out)->sync());
        note(faulty.rename("/" + std::to_string(kind), "/b"));
        note(faulty.makeFolder("/f"));
        note(faulty.syncFolder("/"));
        note(faulty.list("/"));
        note(faulty.lock("/lock", "x"));
        note(faulty.remove("/b"));
        // Without its file, the rename and the removal that follow fail too.
        EXPECT_GE(refused, 1);
        EXPECT_EQ(faulty.calls(), fileCallKinds);
        EXPECT_EQ(faulty.calls(static_cast<FileCall>(kind)), 1U);
        faulty.failNever();
        std::ignore = faulty.remove("/b");
        std::ignore = faulty.remove("/" + std::to_string(kind));
    }
}

TEST(MemoryKeyStore, KeepsAKeyAndNeverReplacesIt)
{
    MemoryKeyStore keys;
    const auto seed = KeySeed::fromHex(std::string(64, 'a'));
    EXPECT_EQ(*keys.load(KeyName::Owner), std::nullopt);
    ASSERT_TRUE(keys.save(KeyName::Owner, *seed).has_value());
    EXPECT_EQ(keys.save(KeyName::Owner, KeySeed()).error().code, ErrorCode::Conflict);
    EXPECT_EQ(*keys.load(KeyName::Owner), seed);
    EXPECT_EQ(*keys.load(KeyName::Device), std::nullopt);
}

TEST(TempFolder, IsNewAndGoesWithAllThatIsInIt)
{
    Path kept;
    {
        const TempFolder a;
        const TempFolder b;
        EXPECT_NE(a.path(), b.path());
        EXPECT_TRUE(std::filesystem::is_empty(a.path()));
        std::filesystem::create_directories(a.path() / "deep/er");
        std::ofstream(a.path() / "deep/er/file") << "text";
        kept = a.path();
    }
    EXPECT_FALSE(std::filesystem::exists(kept));
}

}  // namespace spile::support
