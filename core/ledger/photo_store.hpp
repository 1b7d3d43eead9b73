#pragma once

#include "core/base/file_system.hpp"
#include "core/base/ids.hpp"

#include <functional>

namespace spile::ledger {

/// The photos of a cellar: files named by the SHA-256 of their bytes, photos/ab/<sha256>.
class PhotoStore {
public:
    PhotoStore(FileSystem& files, Path folder) : files_(files), folder_(std::move(folder)) {}

    /// Where the photo with this hash lies, or would lie.
    [[nodiscard]] Path pathOf(const Sha256& hash) const;
    [[nodiscard]] bool has(const Sha256& hash) const { return files_.exists(pathOf(hash)); }
    /// Whether it is there and has that hash still.
    [[nodiscard]] bool isWhole(const Sha256& hash) const;

    /// Store `bytes`, durably when this returns, and return their hash. Fine if it is there; a
    /// damaged file of that name is replaced.
    ///
    /// Errors    StorageFull, also where less is free than it and the ballast take (ballast.hpp);
    ///           Storage. Then no file with that name has been left.
    [[nodiscard]] Result<Sha256> add(ByteView bytes);

    /// Store `size` bytes that `readAt` gives, in pieces, if their hash is `expected`.
    ///
    /// Errors    Damaged if it is not; nothing is left then.
    [[nodiscard]] Result<void> addStreamed(
        const Sha256& expected, std::uint64_t size,
        const std::function<Result<void>(std::uint64_t offset, std::span<std::uint8_t> into)>&
            readAt);

    /// Put a file out of the way that does not have that hash any more, as PATH.damaged, until the
    /// photo comes again. Nothing if it is whole or not there.
    [[nodiscard]] Result<void> setAside(const Sha256& hash);

    /// Errors    NotFound if it is not here; Damaged if the file does not have that hash any more.
    [[nodiscard]] Result<Bytes> read(const Sha256& hash) const;

private:
    FileSystem& files_;
    Path folder_;
};

/// A photo is at most this large: a phone's largest still, uncompressed, is not.
inline constexpr std::uint64_t photoBytesMax = std::uint64_t{64} << 20U;

}  // namespace spile::ledger
