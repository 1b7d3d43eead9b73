// Archives over 4 GiB or 65,535 members, without the time and room that their bytes would take.
#include "core/ledger/zip.hpp"
#include "tests/support/libzip_archives.hpp"
#include "tests/support/temp_folder.hpp"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <zip.h>

namespace spile::ledger {

static constexpr std::uint64_t fiveGiB = 5ULL << 30U;

namespace {

// Zeros, but for the parts that were put somewhere.
class SparseFile final : public InputFile {
public:
    void put(std::uint64_t offset, Bytes bytes)
    {
        size_ = std::max<std::uint64_t>(size_, offset + bytes.size());
        parts_[offset] = std::move(bytes);
    }
    [[nodiscard]] std::uint64_t size() const override { return size_; }
    [[nodiscard]] Result<void> readAt(std::uint64_t offset, std::span<std::uint8_t> into) override
    {
        std::fill(into.begin(), into.end(), std::uint8_t{0});
        for (const auto& [start, bytes] : parts_) {
            for (std::size_t i = 0; i < bytes.size(); ++i) {
                if (start + i >= offset && start + i - offset < into.size()) {
                    into[start + i - offset] = bytes[i];
                }
            }
        }
        return {};
    }
    void writeTo(const Path& path) const
    {
        std::ofstream(path).close();
        std::filesystem::resize_file(path, size_);
        std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
        for (const auto& [start, bytes] : parts_) {
            file.seekp(static_cast<std::streamoff>(start));
            file << asText(bytes);
        }
    }

private:
    std::uint64_t size_ = 0;
    std::map<std::uint64_t, Bytes> parts_;
};

}  // namespace

// Two members, the first of 5 GiB, so that the second begins beyond 4 GiB.
static SparseFile largeArchive()
{
    SparseFile file;
    ZipMember big{"big", fiveGiB, 0, 0};
    file.put(0, encodeLocalHeader(big));
    ZipMember small{"small", 0, 0, file.size() + fiveGiB};
    file.put(small.offset, encodeLocalHeader(small));
    const std::uint64_t start = file.size();
    Bytes directory = encodeCentralEntry(big);
    const Bytes second = encodeCentralEntry(small);
    directory.insert(directory.end(), second.begin(), second.end());
    const Bytes end = encodeEnd({2, start, directory.size()});
    file.put(start, directory);
    file.put(file.size(), end);
    return file;
}

TEST(Zip64, IsReadBeyondFourGiB)
{
    SparseFile file = largeArchive();
    const auto reader = ZipReader::open(file);
    ASSERT_TRUE(reader.has_value());
    EXPECT_EQ(reader->find("big")->size, fiveGiB);
    EXPECT_GT(reader->find("small")->offset, fiveGiB);
}

TEST(Zip64, IsReadByLibzipToo)
{
    const support::TempFolder folder;
    const Path path = folder.path() / "large.zip";
    largeArchive().writeTo(path);
    int error = 0;
    zip_t* zip = zip_open(path.c_str(), ZIP_RDONLY | ZIP_CHECKCONS, &error);
    ASSERT_NE(zip, nullptr) << error;
    zip_stat_t status;
    ASSERT_EQ(zip_stat(zip, "big", 0, &status), 0);
    EXPECT_EQ(status.size, fiveGiB);
    EXPECT_EQ(zip_stat(zip, "small", 0, &status), 0);
    zip_discard(zip);
}

TEST(Zip64, IsUsedOnlyWhereItIsNeeded)
{
    const auto grows = [](const ZipMember& member) {
        return encodeLocalHeader(member).size() > 31 || encodeCentralEntry(member).size() > 47;
    };
    EXPECT_FALSE(grows({"a", 0xfffffffe, 0, 0xfffffffe}));
    EXPECT_TRUE(grows({"a", 0xffffffff, 0, 0}));
    EXPECT_TRUE(grows({"a", 0, 0, 0xffffffff}));
    EXPECT_EQ(encodeEnd({65'534, 0xfffffffe, 0xfffffffe}).size(), 22U);
    EXPECT_EQ(encodeEnd({65'535, 0, 0}).size(), 98U);
    EXPECT_EQ(encodeEnd({0, 0xffffffff, 0}).size(), 98U);
}

TEST(Zip64, HoldsMoreThan65535Members)
{
    support::ZipContents contents;
    for (int i = 0; i < 65'536; ++i) {
        contents.emplace_back("m" + std::to_string(i), "");
    }
    const Bytes archive = support::zipOf(contents);
    EXPECT_EQ(support::unzipped(archive).error().code, ErrorCode::TooLarge);
    EXPECT_EQ(support::unzipped(archive, {.maxMembers = 65'536}), contents);
    EXPECT_EQ(support::libzipContents(archive), contents);
}

TEST(Zip64, RefusesSizesThatWrapAround)
{
    for (const std::uint64_t size : {~std::uint64_t{0}, ~std::uint64_t{0} - 60}) {
        SparseFile file;
        const ZipMember member{"a", size, 0, 0};
        file.put(0, encodeLocalHeader(member));
        const std::uint64_t start = file.size();
        file.put(start, encodeCentralEntry(member));
        file.put(file.size(), encodeEnd({1, start, file.size() - start}));
        EXPECT_EQ(ZipReader::open(file).error().value, "reaches into the directory");
    }
    for (const ZipEnd& end : {ZipEnd{1, ~std::uint64_t{0}, 1}, ZipEnd{1, 1, ~std::uint64_t{0}},
                              ZipEnd{20'000, ~std::uint64_t{0} - 40, 139}}) {
        SparseFile file;
        file.put(0, encodeEnd(end));
        EXPECT_EQ(ZipReader::open(file).error().value,
                  "the directory is not where the end record says");
    }
}

}  // namespace spile::ledger
