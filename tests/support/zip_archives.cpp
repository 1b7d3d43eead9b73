#include "tests/support/zip_archives.hpp"

#include "core/ledger/crc32.hpp"

#include <algorithm>

namespace spile::support {

using ledger::ZipMember;

Result<void> BytesFile::readAt(std::uint64_t offset, std::span<std::uint8_t> into)
{
    if (offset > bytes_.size() || into.size() > bytes_.size() - offset) {
        return fail(ErrorCode::Damaged, "bytes", "ends too early");
    }
    const ByteView part = bytes_.subspan(offset, into.size());
    std::copy(part.begin(), part.end(), into.begin());
    return {};
}

Result<void> CollectingFile::append(ByteView bytes)
{
    bytes_.insert(bytes_.end(), bytes.begin(), bytes.end());
    return {};
}

Bytes zipOf(const ZipContents& contents)
{
    CollectingFile out;
    ledger::ZipWriter writer(out);
    for (const auto& [name, text] : contents) {
        if (!writer.addBytes(name, asBytes(text))) {
            return {};
        }
    }
    return writer.finish() ? out.bytes() : Bytes();
}

Bytes zipOfAnyNames(const ZipContents& contents)
{
    Bytes archive;
    const auto append = [&](ByteView bytes) {
        archive.insert(archive.end(), bytes.begin(), bytes.end());
    };
    std::vector<ZipMember> members;
    for (const auto& [name, text] : contents) {
        members.push_back({name, text.size(), ledger::crc32(asBytes(text)), archive.size()});
        append(encodeLocalHeader(members.back()));
        append(asBytes(text));
    }
    const std::size_t start = archive.size();
    for (const ZipMember& member : members) {
        append(encodeCentralEntry(member));
    }
    append(ledger::encodeEnd({members.size(), start, archive.size() - start}));
    return archive;
}

Result<ZipContents> unzipped(ByteView archive, const ledger::ZipLimits& limits)
{
    BytesFile file(archive);
    SPILE_ASSIGN(reader, ledger::ZipReader::open(file, limits));
    ZipContents contents;
    for (const ZipMember& member : reader.members()) {
        SPILE_ASSIGN(bytes, reader.readWhole(member, archive.size()));
        contents.emplace_back(member.name, asText(bytes));
    }
    return contents;
}

}  // namespace spile::support
