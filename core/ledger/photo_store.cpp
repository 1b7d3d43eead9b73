#include "core/ledger/photo_store.hpp"

#include "core/base/sha256.hpp"
#include "core/ledger/ballast.hpp"

#include <algorithm>

namespace spile::ledger {

namespace {

constexpr std::size_t pieceBytes = std::size_t{1} << 16U;

Path asideOf(const Path& path) { return path.string() + ".damaged"; }

}  // namespace

Path PhotoStore::pathOf(const Sha256& hash) const
{
    const std::string name = hash.hex();
    return folder_ / name.substr(0, 2) / name;
}

bool PhotoStore::isWhole(const Sha256& hash) const { return has(hash) && read(hash); }

Result<Sha256> PhotoStore::add(ByteView bytes)
{
    // What is kept for a full disk is for records: a photo is refused before it needs that.
    const auto free = files_.freeBytes(folder_);
    if (free && *free < bytes.size() + ballastBytes) {
        return fail(ErrorCode::StorageFull, "photo", std::to_string(*free >> 20U) + " MiB free",
                    "make room first; records without photos are still saved");
    }
    const Sha256 hash = sha256(bytes);
    SPILE_TRY(
        addStreamed(hash, bytes.size(), [&](std::uint64_t offset, std::span<std::uint8_t> into) {
            std::copy_n(bytes.begin() + static_cast<std::ptrdiff_t>(offset), into.size(),
                        into.begin());
            return Result<void>();
        }));
    return hash;
}

Result<void> PhotoStore::addStreamed(
    const Sha256& expected, std::uint64_t size,
    const std::function<Result<void>(std::uint64_t offset, std::span<std::uint8_t> into)>& readAt)
{
    if (size > photoBytesMax) {
        return fail(ErrorCode::TooLarge, "photo", std::to_string(size),
                    std::to_string(photoBytesMax));
    }
    if (isWhole(expected)) {
        return {};
    }
    const Path path = pathOf(expected);
    const Path temporary = path.parent_path() / (".tmp-" + path.filename().string());
    SPILE_TRY(files_.makeFolder(path.parent_path()));
    SPILE_TRY(files_.syncFolder(folder_));
    if (files_.exists(temporary)) {  // left by a process that was killed
        SPILE_TRY(files_.remove(temporary));
    }
    const auto write = [&]() -> Result<void> {
        SPILE_ASSIGN(file, files_.create(temporary));
        Sha256Stream hash;
        Bytes piece(std::min<std::uint64_t>(size, pieceBytes));
        for (std::uint64_t offset = 0; offset < size; offset += piece.size()) {
            piece.resize(std::min<std::uint64_t>(size - offset, pieceBytes));
            SPILE_TRY(readAt(offset, piece));
            hash.add(piece);
            SPILE_TRY(file->append(piece));
        }
        if (hash.finish() != expected) {
            return fail(ErrorCode::Damaged, "photo", expected.hex(), "copy it again");
        }
        SPILE_TRY(file->sync());
        SPILE_TRY(files_.rename(temporary, path));
        if (files_.exists(asideOf(path))) {
            SPILE_TRY(files_.remove(asideOf(path)));
        }
        return files_.syncFolder(path.parent_path());
    };
    auto written = write();
    if (!written && files_.exists(temporary)) {
        std::ignore = files_.remove(temporary);  // the first error is the one to report
    }
    return written;
}

Result<void> PhotoStore::setAside(const Sha256& hash)
{
    if (!has(hash) || isWhole(hash)) {
        return {};
    }
    const Path path = pathOf(hash);
    SPILE_TRY(files_.rename(path, asideOf(path)));
    return files_.syncFolder(path.parent_path());
}

Result<Bytes> PhotoStore::read(const Sha256& hash) const
{
    SPILE_ASSIGN(bytes, readWhole(files_, pathOf(hash), photoBytesMax));
    if (sha256(bytes) != hash) {
        return fail(ErrorCode::Damaged, "photo", hash.hex(), "take in a day file that has it");
    }
    return std::move(bytes);
}

}  // namespace spile::ledger
