#include "core/ledger/crc32.hpp"
#include "core/ledger/zip.hpp"

#include <algorithm>

namespace spile::ledger {

static tl::unexpected<Error> refuse(std::string subject, const char* why)
{
    return fail(ErrorCode::Damaged, std::move(subject), why);
}

static Result<Bytes> readPart(InputFile& file, std::uint64_t offset, std::uint64_t size)
{
    Bytes bytes(size);
    SPILE_TRY(file.readAt(offset, bytes));
    return bytes;
}

// Reads the end records and checks that the directory lies right before them.
static Result<ZipEnd> readEnd(InputFile& file, const ZipLimits& limits)
{
    const std::uint64_t size = file.size();
    if (size > limits.maxBytes) {
        return fail(ErrorCode::TooLarge, "archive", std::to_string(size),
                    std::to_string(limits.maxBytes));
    }
    const std::uint64_t tailSize = std::min<std::uint64_t>(size, zipLongestEnd);
    SPILE_ASSIGN(tail, readPart(file, size - tailSize, tailSize));
    SPILE_ASSIGN(end, decodeEnd(tail));
    if (end.members > limits.maxMembers) {
        return fail(ErrorCode::TooLarge, "archive", std::to_string(end.members) + " members",
                    std::to_string(limits.maxMembers));
    }
    const std::uint64_t beforeEnd = size - encodeEnd(end).size();
    if (end.size > beforeEnd || end.offset != beforeEnd - end.size) {
        return refuse("archive", "the directory is not where the end record says");
    }
    if (end.size / zipLongestCentralEntry > end.members) {
        return refuse("archive", "the directory is too long for its members");
    }
    return end;
}

// Checks that `member` begins at `offset`, with the right header, and ends by `limit`. Returns
// where it ends.
static Result<std::uint64_t> checkPlace(InputFile& file, const ZipMember& member,
                                        std::uint64_t offset, std::uint64_t limit)
{
    if (member.offset != offset) {
        return refuse(member.name, "a gap or an overlap before it");
    }
    const Bytes expected = encodeLocalHeader(member);
    if (expected.size() > limit - offset || member.size > limit - offset - expected.size()) {
        return refuse(member.name, "reaches into the directory");
    }
    SPILE_ASSIGN(header, readPart(file, offset, expected.size()));
    if (header != expected) {
        return refuse(member.name, "its header and its directory entry differ");
    }
    return offset + expected.size() + member.size;
}

Result<ZipReader> ZipReader::open(InputFile& file, const ZipLimits& limits)
{
    SPILE_ASSIGN(end, readEnd(file, limits));
    SPILE_ASSIGN(directory, readPart(file, end.offset, end.size));
    ZipReader reader(file);
    ZipNames names;
    ByteView rest = directory;
    std::uint64_t offset = 0;
    for (std::uint64_t i = 0; i < end.members; ++i) {
        SPILE_ASSIGN(member, decodeCentralEntry(rest));
        if (auto added = names.add(member.name); !added) {
            return refuse(member.name, added.error().value.c_str());
        }
        SPILE_ASSIGN(next, checkPlace(file, member, offset, end.offset));
        rest = rest.subspan(encodeCentralEntry(member).size());
        offset = next;
        reader.places_.emplace(member.name, reader.members_.size());
        reader.members_.push_back(std::move(member));
    }
    if (!rest.empty() || offset != end.offset) {
        return refuse("archive", "bytes that belong to no member");
    }
    return reader;
}

const ZipMember* ZipReader::find(const std::string& name) const
{
    const auto place = places_.find(name);
    return place == places_.end() ? nullptr : &members_[place->second];
}

Result<void> ZipReader::readAt(const ZipMember& member, std::uint64_t offset,
                               std::span<std::uint8_t> into) const
{
    if (offset > member.size || into.size() > member.size - offset) {
        return fail(ErrorCode::OutOfRange, member.name, std::to_string(offset),
                    std::to_string(member.size));
    }
    return file_->readAt(member.offset + encodeLocalHeader(member).size() + offset, into);
}

Result<void> ZipReader::forEachChunk(const ZipMember& member, const Consume& consume) const
{
    Bytes chunk(std::min<std::uint64_t>(member.size, chunkSize));
    Crc32 crc;
    for (std::uint64_t at = 0; at < member.size;) {
        const std::span piece =
            std::span(chunk).first(std::min<std::uint64_t>(member.size - at, chunkSize));
        SPILE_TRY(readAt(member, at, piece));
        crc.add(piece);
        SPILE_TRY(consume(piece));
        at += piece.size();
    }
    if (crc.value() != member.crc) {
        return refuse(member.name, "its bytes are not what was written (checksum)");
    }
    return {};
}

Result<Bytes> ZipReader::readWhole(const ZipMember& member, std::uint64_t maxBytes) const
{
    if (member.size > maxBytes) {
        return fail(ErrorCode::TooLarge, member.name, std::to_string(member.size),
                    std::to_string(maxBytes));
    }
    Bytes bytes;
    bytes.reserve(member.size);
    SPILE_TRY(forEachChunk(member, [&](ByteView piece) -> Result<void> {
        bytes.insert(bytes.end(), piece.begin(), piece.end());
        return {};
    }));
    return bytes;
}

}  // namespace spile::ledger
