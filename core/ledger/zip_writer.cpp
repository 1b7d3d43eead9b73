#include "core/base/sha256.hpp"
#include "core/ledger/crc32.hpp"
#include "core/ledger/zip.hpp"

#include <algorithm>

namespace spile::ledger {

// Gives all bytes of `file` to `consume`, in pieces.
template <class Consume>
static Result<void> readAll(InputFile& file, std::uint64_t size, Consume consume)
{
    Bytes chunk(std::min<std::uint64_t>(size, chunkSize));
    for (std::uint64_t at = 0; at < size;) {
        const std::span piece =
            std::span(chunk).first(std::min<std::uint64_t>(size - at, chunkSize));
        SPILE_TRY(file.readAt(at, piece));
        SPILE_TRY(consume(ByteView(piece)));
        at += piece.size();
    }
    return {};
}

Result<void> ZipWriter::write(ByteView bytes)
{
    SPILE_TRY(out_.append(bytes));
    size_ += bytes.size();
    return {};
}

Result<void> ZipWriter::begin(ZipMember member)
{
    SPILE_TRY(names_.add(member.name));
    member.offset = size_;
    SPILE_TRY(write(encodeLocalHeader(member)));
    members_.push_back(std::move(member));
    return {};
}

Result<Sha256> ZipWriter::addBytes(std::string_view name, ByteView bytes)
{
    SPILE_TRY(begin({std::string(name), bytes.size(), crc32(bytes)}));
    SPILE_TRY(write(bytes));
    return sha256(bytes);
}

Result<Sha256> ZipWriter::addFile(std::string_view name, InputFile& file)
{
    const std::uint64_t size = file.size();
    if (size <= readAtOnce) {
        Bytes whole(size);
        SPILE_TRY(file.readAt(0, whole));
        return addBytes(name, whole);
    }
    Crc32 first;
    SPILE_TRY(readAll(file, size, [&](ByteView piece) -> Result<void> {
        first.add(piece);
        return {};
    }));
    SPILE_TRY(begin({std::string(name), size, first.value()}));
    Crc32 second;
    Sha256Stream hash;
    SPILE_TRY(readAll(file, size, [&](ByteView piece) -> Result<void> {
        second.add(piece);
        hash.add(piece);
        return write(piece);
    }));
    if (second.value() != first.value()) {
        return fail(ErrorCode::Conflict, std::string(name), "the file changed while it was read");
    }
    return hash.finish();
}

Result<void> ZipWriter::finish()
{
    const std::uint64_t start = size_;
    for (const ZipMember& member : members_) {
        SPILE_TRY(write(encodeCentralEntry(member)));
    }
    return write(encodeEnd({members_.size(), start, size_ - start}));
}

}  // namespace spile::ledger
