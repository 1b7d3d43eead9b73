#include "core/ledger/zip.hpp"

#include "core/base/sha256.hpp"
#include "platform/system/disk_file_system.hpp"
#include "tests/support/libzip_archives.hpp"
#include "tests/support/temp_folder.hpp"

#include <cstdlib>
#include <gtest/gtest.h>

namespace spile::ledger {

using support::BytesFile;
using support::unzipped;
using support::ZipContents;
using support::zipOf;

static ZipContents sample()
{
    std::string large(70'000, 'w');
    large += "\n\r\x1a";
    return {{"L7f3a/bagit.txt", "BagIt-Version: 1.0\n"},
            {"L7f3a/data/empty", ""},
            {"L7f3a/data/att/0b1c", large}};
}

TEST(ZipWriter, WritesWhatTheReaderReads)
{
    EXPECT_EQ(unzipped(zipOf(sample())), sample());
    EXPECT_EQ(unzipped(zipOf({})), ZipContents());
}

TEST(ZipWriter, WritesTheSameBytesForTheSameMembers)
{
    EXPECT_EQ(zipOf(sample()), zipOf(sample()));
    // One member in full, from the field tables of APPNOTE.TXT, sections 4.3.7, 4.3.12, 4.3.16.
    // The checksum of "a" is that of tests/reference/crc32_test.cpp.
    EXPECT_EQ(toHex(zipOf({{"n", "a"}})),
              "504b0304"
              "0a00"
              "0000"
              "0000"
              "0000"
              "2100"
              "43beb7e8"
              "01000000"
              "01000000"
              "0100"
              "0000"
              "6e"
              "61"
              "504b0102"
              "0a03"
              "0a00"
              "0000"
              "0000"
              "0000"
              "2100"
              "43beb7e8"
              "01000000"
              "01000000"
              "0100"
              "0000"
              "0000"
              "0000"
              "0000"
              "0000a481"
              "00000000"
              "6e"
              "504b0506"
              "0000"
              "0000"
              "0100"
              "0100"
              "2f000000"
              "20000000"
              "0000");
}

TEST(ZipWriter, AgreesWithLibzipOnEveryByte)
{
    EXPECT_EQ(support::libzipContents(zipOf(sample())), sample());
}

TEST(ZipWriter, PassesTheTestOfUnzip)
{
    const support::TempFolder folder;
    system::DiskFileSystem disk;
    const Path path = folder.path() / "a.spile";
    const auto accepts = [&] {
        const std::string command =
            "unzip -tqq '" + path.string() + "' >'" + (folder.path() / "log").string() + "' 2>&1";
        return std::system(command.c_str()) == 0;
    };
    Bytes archive = zipOf(sample());
    ASSERT_TRUE(writeWhole(disk, path, archive).has_value());
    EXPECT_TRUE(accepts());
    archive[60] ^= 1U;  // so that unzip is seen to refuse
    ASSERT_TRUE(writeWhole(disk, path, archive).has_value());
    EXPECT_FALSE(accepts());
}

TEST(ZipWriter, AddsAFileAsItAddsItsBytesAndReturnsTheHash)
{
    for (const std::uint64_t size : {std::uint64_t{200'000}, ZipWriter::readAtOnce + 1}) {
        const std::string text(size, 'x');
        support::CollectingFile out;
        ZipWriter writer(out);
        BytesFile file(asBytes(text));
        EXPECT_EQ(writer.addFile("big", file), sha256(asBytes(text)));
        EXPECT_EQ(writer.addBytes("small", asBytes("y")), sha256(asBytes("y")));
        ASSERT_TRUE(writer.finish().has_value());
        EXPECT_EQ(out.bytes(), zipOf({{"big", text}, {"small", "y"}}));
        EXPECT_EQ(writer.size(), out.bytes().size());
    }
}

TEST(ZipWriter, NoticesALargeFileThatChangesWhileItIsRead)
{
    class ChangingFile final : public InputFile {
    public:
        [[nodiscard]] std::uint64_t size() const override { return ZipWriter::readAtOnce + 1; }
        [[nodiscard]] Result<void> readAt(std::uint64_t /*offset*/,
                                          std::span<std::uint8_t> into) override
        {
            into[0] = ++reads_;
            return {};
        }

    private:
        std::uint8_t reads_ = 0;
    };
    support::CollectingFile out;
    ZipWriter writer(out);
    ChangingFile file;
    const auto added = writer.addFile("a", file);
    ASSERT_FALSE(added.has_value());
    EXPECT_EQ(added.error().code, ErrorCode::Conflict);
}

TEST(ZipWriter, RefusesNamesThatNotEverySystemCanUnpack)
{
    for (const std::string& name :
         {std::string(), std::string("/a"), std::string("a/"), std::string("a//b"),
          std::string("."), std::string(".."), std::string("../a"), std::string("a/../b"),
          std::string("a/./b"), std::string("a\\b"), std::string("c:"), std::string("a b"),
          std::string("\xc3\xa9"), std::string("a\0b", 3), std::string(121, 'a')}) {
        support::CollectingFile out;
        const auto added = ZipWriter(out).addBytes(name, {});
        ASSERT_FALSE(added.has_value()) << name;
        EXPECT_EQ(added.error().code, ErrorCode::Malformed);
        EXPECT_TRUE(out.bytes().empty());
    }
    support::CollectingFile out;
    EXPECT_TRUE(ZipWriter(out).addBytes(std::string(120, 'a'), {}).has_value());
    EXPECT_TRUE(ZipWriter(out).addBytes("..a/...", {}).has_value());
}

TEST(ZipWriter, RefusesTwoMembersInOnePlace)
{
    for (const auto& [first, second] : std::vector<std::pair<const char*, const char*>>{
             {"a", "a"}, {"readme", "README"}, {"a", "a/b"}, {"a/b", "a"}, {"a/b/c", "A/B"}}) {
        support::CollectingFile out;
        ZipWriter writer(out);
        ASSERT_TRUE(writer.addBytes(first, {}).has_value());
        const auto added = writer.addBytes(second, {});
        ASSERT_FALSE(added.has_value()) << second;
        EXPECT_EQ(added.error().code, ErrorCode::Conflict);
    }
}

TEST(ZipReader, FindsAMemberAndReadsAnyPartOfIt)
{
    const Bytes archive = zipOf(sample());
    BytesFile file(archive);
    const auto reader = ZipReader::open(file);
    ASSERT_TRUE(reader.has_value());
    EXPECT_EQ(reader->find("L7f3a"), nullptr);
    const ZipMember* member = reader->find("L7f3a/bagit.txt");
    ASSERT_NE(member, nullptr);
    EXPECT_EQ(member->size, 19U);
    std::array<std::uint8_t, 4> four{};
    ASSERT_TRUE(reader->readAt(*member, 15, four).has_value());
    EXPECT_EQ(asText(four), "1.0\n");
    for (const std::uint64_t offset : {std::uint64_t{16}, std::uint64_t{20}, ~std::uint64_t{0}}) {
        EXPECT_EQ(reader->readAt(*member, offset, four).error().code, ErrorCode::OutOfRange);
    }
    EXPECT_EQ(reader->readWhole(*member, 18).error().code, ErrorCode::TooLarge);
}

TEST(ZipReader, PassesOnTheErrorOfItsConsumer)
{
    const Bytes archive = zipOf(sample());
    BytesFile file(archive);
    const auto reader = ZipReader::open(file);
    ASSERT_TRUE(reader.has_value());
    int pieces = 0;
    const auto done = reader->forEachChunk(reader->members().back(), [&](ByteView) -> Result<void> {
        ++pieces;
        return fail(ErrorCode::Cancelled, "test");
    });
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().code, ErrorCode::Cancelled);
    EXPECT_EQ(pieces, 1);
}

TEST(ZipReader, HoldsItsLimits)
{
    const Bytes archive = zipOf(sample());
    EXPECT_TRUE(unzipped(archive, {.maxBytes = archive.size(), .maxMembers = 3}).has_value());
    EXPECT_EQ(unzipped(archive, {.maxBytes = archive.size() - 1}).error().code,
              ErrorCode::TooLarge);
    EXPECT_EQ(unzipped(archive, {.maxMembers = 2}).error().code, ErrorCode::TooLarge);
}

TEST(ZipReader, RefusesEveryPrefix)
{
    const Bytes archive = zipOf({{"a/b", "first"}, {"c", "second"}});
    for (std::size_t length = 0; length < archive.size(); ++length) {
        const auto contents = unzipped(ByteView(archive).first(length));
        ASSERT_FALSE(contents.has_value()) << length;
        EXPECT_EQ(contents.error().code, ErrorCode::Damaged) << length;
    }
}

TEST(ZipReader, NoticesEveryFlippedBit)
{
    const ZipContents contents{{"a/b", "first"}, {"c", "second"}};
    const Bytes archive = zipOf(contents);
    const std::size_t firstHeader = encodeLocalHeader({"a/b", 5, 0, 0}).size();
    for (std::size_t bit = 0; bit < archive.size() * 8; ++bit) {
        Bytes flipped = archive;
        flipped[bit / 8] ^= static_cast<std::uint8_t>(1U << bit % 8);
        const auto read = unzipped(flipped);
        ASSERT_FALSE(read.has_value()) << bit;
        if (bit / 8 >= firstHeader && bit / 8 < firstHeader + 5) {
            EXPECT_EQ(read.error(), (Error{ErrorCode::Damaged, "a/b",
                                           "its bytes are not what was written (checksum)", ""}));
        }
    }
}

}  // namespace spile::ledger
