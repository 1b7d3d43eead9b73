// Archives that a person, a bad disk or another program may hand over.
#include "core/ledger/crc32.hpp"
#include "core/ledger/zip.hpp"
#include "tests/support/libzip_archives.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::ledger {

using support::libzipArchive;
using support::unzipped;
using support::ZipContents;
using support::zipOf;
using support::zipOfAnyNames;

// The code, the member and the reason of the refusal; "accepted" if there is none.
static std::string refusalOf(const Bytes& archive)
{
    const auto contents = unzipped(archive);
    if (contents) {
        return "accepted";
    }
    const Error& error = contents.error();
    const char* code = error.code == ErrorCode::Damaged       ? "Damaged"
                       : error.code == ErrorCode::Unsupported ? "Unsupported"
                                                              : "another code";
    return std::string(code) + ", " + error.subject + ": " + error.value;
}

// Puts `bytes` at `at`, counted from the end if negative.
static Bytes patched(Bytes archive, std::ptrdiff_t at, const Bytes& bytes)
{
    std::copy(bytes.begin(), bytes.end(), (at < 0 ? archive.end() : archive.begin()) + at);
    return archive;
}

TEST(Fault23_Bomb, IsRefusedBeforeItUnfolds)
{
    // 16 MB of zeros in 16 kB, made by libzip.
    const Bytes bomb = libzipArchive({{"a", std::string(16U << 20U, '\0')}}, {.deflate = true});
    EXPECT_LT(bomb.size(), 20'000U);
    EXPECT_EQ(refusalOf(bomb), "Unsupported, a: compressed");
}

// A thousand members that are all the same megabyte: a file of one that would unpack to a thousand.
TEST(Fault23_Bomb, OfMembersThatOverlapIsRefused)
{
    const std::string kernel(1U << 20U, 'a');
    const std::uint32_t crc = crc32(asBytes(kernel));
    std::vector<ZipMember> members;
    for (int i = 0; i < 1000; ++i) {
        members.push_back({"m" + std::to_string(i), kernel.size(), crc, 0});
    }
    Bytes bomb = encodeLocalHeader(members.front());
    bomb.insert(bomb.end(), kernel.begin(), kernel.end());
    const std::size_t start = bomb.size();
    for (const ZipMember& member : members) {
        const Bytes entry = encodeCentralEntry(member);
        bomb.insert(bomb.end(), entry.begin(), entry.end());
    }
    const Bytes end = encodeEnd({members.size(), start, bomb.size() - start});
    bomb.insert(bomb.end(), end.begin(), end.end());
    EXPECT_EQ(refusalOf(bomb), "Damaged, m1: a gap or an overlap before it");
}

TEST(Fault23_Bomb, ThatClaimsMoreThanItHoldsIsRefused)
{
    const Bytes good = zipOf({{"a", "1"}, {"b", "2"}});
    EXPECT_EQ(refusalOf(patched(good, 64 + 20, {0, 0, 0, 0x7f, 0, 0, 0, 0x7f})),
              "Damaged, a: reaches into the directory");
}

TEST(Fault25_TwistedArchive, OfLibzipIsRefusedForItsFeature)
{
    const ZipContents one{{"a", std::string(1000, 'a')}};
    EXPECT_EQ(refusalOf(libzipArchive(one, {.encrypt = true})), "Unsupported, a: encrypted");
    EXPECT_EQ(refusalOf(libzipArchive(one, {.comment = "hello"})),
              "Damaged, archive: no end record at the end: cut off or added to");
    // Sound, but not in the one form: its time is not 1980, say.
    EXPECT_EQ(refusalOf(libzipArchive(one)), "Damaged, a: directory entry of another form");
}

TEST(Fault24_PathTrick, OfALinkOrDeviceIsRefused)
{
    for (const unsigned mode : {0120777U, 0020666U, 0060666U, 0010666U}) {
        EXPECT_EQ(refusalOf(libzipArchive({{"a", "/etc/passwd"}}, {.unixMode = mode})),
                  "Unsupported, a: not a plain file (link, folder or device)");
    }
}

TEST(Fault24_PathTrick, InANameIsRefused)
{
    for (const auto& [name, shown, why] :
         std::vector<std::tuple<std::string, std::string, std::string>>{
             {"../a", "../a", "name that leads elsewhere"},
             {"a/../../b", "a/../../b", "name that leads elsewhere"},
             {"/etc/passwd", "/etc/passwd", "name that leads elsewhere"},
             {"a//b", "a//b", "name that leads elsewhere"},
             {"folder/", "folder/", "name that leads elsewhere"},
             {"a\\b", "a?b", "name with a character that is not allowed"},
             {"c:a", "c?a", "name with a character that is not allowed"},
             {"\xe2\x80\xae", "???", "name with a character that is not allowed"}}) {
        const std::string expected = "Damaged, " + shown + ": " + why;
        EXPECT_EQ(refusalOf(zipOfAnyNames({{name, "x"}})), expected);
        EXPECT_EQ(refusalOf(libzipArchive({{name, "x"}})), expected);
    }
    EXPECT_EQ(refusalOf(zipOfAnyNames({{"", "x"}})),
              "Damaged, : name of no or more than 120 characters");
    EXPECT_EQ(refusalOf(zipOfAnyNames({{"ok", "x"}})), "accepted");
}

TEST(Fault25_TwistedArchive, WithTwoMembersInOnePlaceIsRefused)
{
    EXPECT_EQ(refusalOf(zipOfAnyNames({{"a", "1"}, {"a", "2"}})),
              "Damaged, a: name that stands for two members");
    EXPECT_EQ(refusalOf(zipOfAnyNames({{"a", "1"}, {"A", "2"}})),
              "Damaged, A: name that stands for two members");
    EXPECT_EQ(refusalOf(zipOfAnyNames({{"a", "1"}, {"a/b", "2"}})),
              "Damaged, a/b: name inside another member's");
}

TEST(Fault25_TwistedArchive, WithMoreThanItsMembersIsRefused)
{
    const Bytes good = zipOf({{"a", "1"}, {"b", "2"}});
    Bytes before = good;
    before.insert(before.begin(), 'x');
    EXPECT_EQ(refusalOf(before),
              "Damaged, archive: the directory is not where the end record says");
    Bytes after = good;
    after.push_back(0);
    EXPECT_EQ(refusalOf(after), "Damaged, archive: no end record at the end: cut off or added to");
}

// Byte places: local header 0, its flags 6; then (name and text of one byte each) the directory
// entry at 64, since two members of 32 bytes come first; the end record is the last 22 bytes.
TEST(Fault25_TwistedArchive, WithOneFieldChangedIsRefusedForIt)
{
    const Bytes good = zipOf({{"a", "1"}, {"b", "2"}});
    constexpr std::ptrdiff_t entry = 64;
    const auto refusal = [&](std::ptrdiff_t at, const Bytes& bytes) {
        return refusalOf(patched(good, at, bytes));
    };
    EXPECT_EQ(refusal(entry + 8, {8}), "Unsupported, a: sizes after the bytes (data descriptor)");
    EXPECT_EQ(refusal(entry + 8, {1}), "Unsupported, a: encrypted");
    EXPECT_EQ(refusal(entry + 10, {8}), "Unsupported, a: compressed");
    EXPECT_EQ(refusal(entry + 40, {0, 0xa0}),
              "Unsupported, a: not a plain file (link, folder or device)");
    EXPECT_EQ(refusal(entry + 12, {1}), "Damaged, a: directory entry of another form");
    EXPECT_EQ(refusal(entry + 20, {2}), "Damaged, a: directory entry of another form");
    EXPECT_EQ(refusal(entry + 42, {32}), "Damaged, a: a gap or an overlap before it");
    EXPECT_EQ(refusal(entry + 47 + 42, {0}), "Damaged, b: a gap or an overlap before it");
    EXPECT_EQ(refusal(entry + 46, {'c'}), "Damaged, c: its header and its directory entry differ");
    EXPECT_EQ(refusal(6, {1}), "Damaged, a: its header and its directory entry differ");
    EXPECT_EQ(refusal(8, {8}), "Damaged, a: its header and its directory entry differ");
    EXPECT_EQ(refusal(-22 + 8, {1, 0, 1, 0}), "Damaged, archive: bytes that belong to no member");
    EXPECT_EQ(refusal(-22 + 8, {3, 0, 3, 0}),
              "Damaged, archive: no entry where the directory should have one");
    EXPECT_EQ(refusal(-22 + 8, {1, 0, 2, 0}), "Damaged, archive: end records of another form");
    EXPECT_EQ(refusal(-22 + 8, {0xff, 0xff, 0xff, 0xff}),
              "Damaged, archive: end records of another form");
    EXPECT_EQ(refusal(entry + 47 + 28, {2}),
              "Damaged, archive: the directory ends within an entry");
    EXPECT_EQ(refusal(entry + 47 + 20, Bytes(8, 0xff)),
              "Damaged, b: directory entry of another form");
    EXPECT_EQ(refusalOf(patched(zipOf({}), 8, {0xff, 0xff, 0xff, 0xff})),
              "Damaged, archive: no zip64 end record");
}

// An archive of one empty member, "a", from its three parts and what stands between them.
static Bytes assembled(const Bytes& header, const Bytes& afterHeader, const Bytes& afterEntry)
{
    Bytes archive = header;
    const auto append = [&](const Bytes& bytes) {
        archive.insert(archive.end(), bytes.begin(), bytes.end());
    };
    append(afterHeader);
    const std::size_t start = archive.size();
    append(encodeCentralEntry({"a", 0, 0, 0}));
    append(afterEntry);
    append(encodeEnd({1, start, archive.size() - start}));
    return archive;
}

TEST(Fault25_TwistedArchive, WithBytesBetweenItsPartsIsRefused)
{
    const Bytes header = encodeLocalHeader({"a", 0, 0, 0});
    EXPECT_EQ(refusalOf(assembled(header, {}, {})), "accepted");
    EXPECT_EQ(refusalOf(assembled(header, {0}, {})),
              "Damaged, archive: bytes that belong to no member");
    EXPECT_EQ(refusalOf(assembled(header, {}, {0})),
              "Damaged, archive: bytes that belong to no member");
    EXPECT_EQ(refusalOf(assembled(header, {}, Bytes(1000))),
              "Damaged, archive: the directory is too long for its members");
    EXPECT_EQ(refusalOf(assembled({}, {}, {})), "Damaged, a: reaches into the directory");
}

TEST(Fault25_TwistedArchive, WithAnotherExtraFieldIsRefused)
{
    // An extra field of kind 0x5455 (times) without content, in both places; lengths mended.
    Bytes archive = zipOf({{"a", "1"}});
    const Bytes field{0x55, 0x54, 0, 0};
    archive[28] = 4;
    archive.insert(archive.begin() + 31, field.begin(), field.end());
    archive[36 + 30] = 4;
    archive.insert(archive.begin() + 36 + 47, field.begin(), field.end());
    archive[archive.size() - 10] += 4;
    archive[archive.size() - 6] += 4;
    EXPECT_EQ(support::libzipContents(archive), (ZipContents{{"a", "1"}}));  // well made, then
    EXPECT_EQ(refusalOf(archive), "Damaged, a: directory entry of another form");
}

}  // namespace spile::ledger
