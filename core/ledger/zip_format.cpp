#include "core/ledger/zip_format.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace spile::ledger {

static constexpr std::size_t centralSize = 46;
static constexpr std::size_t endSize = 22;
static constexpr std::size_t longestName = 120;

static constexpr std::uint32_t localMark = 0x04034b50;
static constexpr std::uint32_t centralMark = 0x02014b50;
static constexpr std::uint32_t endMark = 0x06054b50;
static constexpr std::uint32_t end64Mark = 0x06064b50;
static constexpr std::uint32_t locator64Mark = 0x07064b50;

static constexpr std::uint64_t see64 = 0xffffffff;     // "look into the zip64 field"
static constexpr std::uint64_t seeCount64 = 0xffff;    // the same of a count
static constexpr std::uint64_t version = 10;           // stored files
static constexpr std::uint64_t version64 = 45;         // zip64
static constexpr std::uint64_t madeOnUnix = 3U << 8U;  // says how to read the attributes
static constexpr std::uint64_t date = 1U << 5U | 1U;   // 1980-01-01, the first that DOS has
static constexpr std::uint64_t fileAttributes = 0100644U << 16U;  // a plain file, rw-r--r--

static void put(Bytes& bytes, std::uint64_t number, unsigned width)
{
    for (unsigned i = 0; i < width; ++i) {
        bytes.push_back(static_cast<std::uint8_t>(number >> 8U * i & 0xffU));
    }
}

// Requires that `bytes` has `width` bytes at `at`.
static std::uint64_t take(ByteView bytes, std::size_t at, std::size_t width)
{
    std::uint64_t number = 0;
    for (std::size_t i = width; i-- > 0;) {
        number = number << 8U | bytes[at + i];
    }
    return number;
}

static void putName(Bytes& bytes, std::string_view name)
{
    bytes.insert(bytes.end(), name.begin(), name.end());
}

static bool allows(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           std::string_view("._/-").find(c) != std::string_view::npos;
}

static char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

static tl::unexpected<Error> refuseName(std::string_view name, const char* why)
{
    std::string shown(name.substr(0, longestName));
    std::replace_if(
        shown.begin(), shown.end(), [](char c) { return !allows(c); }, '?');
    return fail(ErrorCode::Malformed, shown, why);
}

static Result<void> checkName(std::string_view name)
{
    if (name.empty() || name.size() > longestName) {
        return refuseName(name, "name of no or more than 120 characters");
    }
    if (!std::all_of(name.begin(), name.end(), allows)) {
        return refuseName(name, "name with a character that is not allowed");
    }
    for (std::size_t begin = 0; begin <= name.size();) {
        const std::size_t end = std::min(name.find('/', begin), name.size());
        const std::string_view segment = name.substr(begin, end - begin);
        if (segment.empty() || segment == "." || segment == "..") {
            return refuseName(name, "name that leads elsewhere");
        }
        begin = end + 1;
    }
    return {};
}

Result<void> ZipNames::add(std::string_view name)
{
    SPILE_TRY(checkName(name));
    std::string folded(name);
    std::transform(folded.begin(), folded.end(), folded.begin(), lower);
    if (folders_.contains(folded) || !files_.insert(folded).second) {
        return fail(ErrorCode::Conflict, std::string(name), "name that stands for two members");
    }
    for (std::size_t at = folded.find('/'); at != std::string::npos;
         at = folded.find('/', at + 1)) {
        std::string folder = folded.substr(0, at);
        if (files_.contains(folder)) {
            return fail(ErrorCode::Conflict, std::string(name), "name inside another member's");
        }
        folders_.insert(std::move(folder));
    }
    return {};
}

static bool needs64(std::uint64_t number) { return number >= see64; }

// The zip64 field of a local header has both sizes or is not there (4.5.3).
static Bytes encodeExtra(const ZipMember& member, bool withOffset)
{
    Bytes numbers;
    if (needs64(member.size)) {
        put(numbers, member.size, 8);
        put(numbers, member.size, 8);
    }
    if (withOffset && needs64(member.offset)) {
        put(numbers, member.offset, 8);
    }
    Bytes extra;
    if (!numbers.empty()) {
        put(extra, 1, 2);  // the number of this kind of field
        put(extra, numbers.size(), 2);
        extra.insert(extra.end(), numbers.begin(), numbers.end());
    }
    return extra;
}

// What local header and central entry have in common: from "version needed" to "extra length".
static void putCommon(Bytes& bytes, const ZipMember& member, const Bytes& extra)
{
    put(bytes, extra.empty() ? version : version64, 2);
    put(bytes, 0, 2);  // flags
    put(bytes, 0, 2);  // method: stored
    put(bytes, 0, 2);  // time
    put(bytes, date, 2);
    put(bytes, member.crc, 4);
    put(bytes, std::min(member.size, see64), 4);
    put(bytes, std::min(member.size, see64), 4);
    put(bytes, member.name.size(), 2);
    put(bytes, extra.size(), 2);
}

Bytes encodeLocalHeader(const ZipMember& member)
{
    const Bytes extra = encodeExtra(member, false);
    Bytes bytes;
    put(bytes, localMark, 4);
    putCommon(bytes, member, extra);
    putName(bytes, member.name);
    bytes.insert(bytes.end(), extra.begin(), extra.end());
    return bytes;
}

Bytes encodeCentralEntry(const ZipMember& member)
{
    const Bytes extra = encodeExtra(member, true);
    Bytes bytes;
    put(bytes, centralMark, 4);
    put(bytes, madeOnUnix | (extra.empty() ? version : version64), 2);
    putCommon(bytes, member, extra);
    put(bytes, 0, 2);  // comment length
    put(bytes, 0, 2);  // disk
    put(bytes, 0, 2);  // internal attributes
    put(bytes, fileAttributes, 4);
    put(bytes, std::min(member.offset, see64), 4);
    putName(bytes, member.name);
    bytes.insert(bytes.end(), extra.begin(), extra.end());
    return bytes;
}

Bytes encodeEnd(const ZipEnd& end)
{
    Bytes bytes;
    if (end.members >= seeCount64 || needs64(end.offset) || needs64(end.size)) {
        put(bytes, end64Mark, 4);
        put(bytes, 44, 8);  // bytes of this record after this field
        put(bytes, madeOnUnix | version64, 2);
        put(bytes, version64, 2);
        put(bytes, 0, 4);  // this disk
        put(bytes, 0, 4);  // disk of the directory
        put(bytes, end.members, 8);
        put(bytes, end.members, 8);
        put(bytes, end.size, 8);
        put(bytes, end.offset, 8);
        put(bytes, locator64Mark, 4);
        put(bytes, 0, 4);  // disk of the record above
        put(bytes, end.offset + end.size, 8);
        put(bytes, 1, 4);  // disks
    }
    put(bytes, endMark, 4);
    put(bytes, 0, 2);  // this disk
    put(bytes, 0, 2);  // disk of the directory
    put(bytes, std::min(end.members, seeCount64), 2);
    put(bytes, std::min(end.members, seeCount64), 2);
    put(bytes, std::min(end.size, see64), 4);
    put(bytes, std::min(end.offset, see64), 4);
    put(bytes, 0, 2);  // comment length
    return bytes;
}

Result<ZipEnd> decodeEnd(ByteView tail)
{
    if (tail.size() < endSize || take(tail, tail.size() - endSize, 4) != endMark) {
        return fail(ErrorCode::Damaged, "archive", "no end record at the end: cut off or added to");
    }
    const ByteView last = tail.last(endSize);
    ZipEnd end{take(last, 10, 2), take(last, 16, 4), take(last, 12, 4)};
    if (end.members == seeCount64 || end.offset == see64 || end.size == see64) {
        if (tail.size() < zipLongestEnd) {
            return fail(ErrorCode::Damaged, "archive", "no zip64 end record");
        }
        const ByteView end64 = tail.last(zipLongestEnd);
        end = ZipEnd{take(end64, 32, 8), take(end64, 48, 8), take(end64, 40, 8)};
    }
    const Bytes expected = encodeEnd(end);
    if (expected.size() > tail.size() ||
        !std::equal(expected.begin(), expected.end(), tail.last(expected.size()).begin())) {
        return fail(ErrorCode::Damaged, "archive", "end records of another form");
    }
    return end;
}

// Names the feature that makes `entry` one that we do not take.
static std::optional<const char*> unsupportedFeature(ByteView entry)
{
    const std::uint64_t flags = take(entry, 8, 2);
    const std::uint64_t kind = take(entry, 38, 4) >> 28U;  // of a Unix file; 0 from other systems
    if ((flags & 1U) != 0) {
        return "encrypted";
    }
    if ((flags & 8U) != 0) {
        return "sizes after the bytes (data descriptor)";
    }
    if (take(entry, 10, 2) != 0) {
        return "compressed";
    }
    if (kind != 0 && kind != 8) {
        return "not a plain file (link, folder or device)";
    }
    return std::nullopt;
}

Result<ZipMember> decodeCentralEntry(ByteView rest)
{
    if (rest.size() < centralSize || take(rest, 0, 4) != centralMark) {
        return fail(ErrorCode::Damaged, "archive", "no entry where the directory should have one");
    }
    const std::size_t nameSize = take(rest, 28, 2);
    const std::size_t extraSize = take(rest, 30, 2);
    if (rest.size() - centralSize < nameSize + extraSize) {
        return fail(ErrorCode::Damaged, "archive", "the directory ends within an entry");
    }
    ZipMember member;
    member.name = asText(rest.subspan(centralSize, nameSize));
    if (auto named = checkName(member.name); !named) {
        return fail(ErrorCode::Damaged, named.error().subject, named.error().value);
    }
    if (const auto feature = unsupportedFeature(rest)) {
        return fail(ErrorCode::Unsupported, member.name, *feature);
    }
    member.crc = static_cast<std::uint32_t>(take(rest, 16, 4));
    member.size = take(rest, 24, 4);
    member.offset = take(rest, 42, 4);

    // Of the fields that may follow only zip64's is read; the comparison below refuses all else.
    std::size_t at = centralSize + nameSize + 4;
    const std::size_t end = centralSize + nameSize + extraSize;
    if (member.size == see64 && at + 16 <= end) {
        member.size = take(rest, at, 8);
        at += 16;
    }
    if (member.offset == see64 && at + 8 <= end) {
        member.offset = take(rest, at, 8);
    }
    const Bytes expected = encodeCentralEntry(member);
    if (expected.size() > rest.size() ||
        !std::equal(expected.begin(), expected.end(), rest.begin())) {
        return fail(ErrorCode::Damaged, member.name, "directory entry of another form");
    }
    return member;
}

}  // namespace spile::ledger
