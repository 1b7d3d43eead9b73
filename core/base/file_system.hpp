#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace spile::inline base {

using Path = std::filesystem::path;

/// A file open for reading at any place.
class InputFile {
public:
    virtual ~InputFile() = default;
    [[nodiscard]] virtual std::uint64_t size() const = 0;
    /// Fill `into` with the bytes from `offset` on.
    ///
    /// Errors    Damaged if the file ends before `into` is full; Storage if the disk refuses.
    [[nodiscard]] virtual Result<void> readAt(std::uint64_t offset,
                                              std::span<std::uint8_t> into) = 0;
};

/// A new file open for writing at its end. Closed by the destructor; only sync() makes it last.
class OutputFile {
public:
    virtual ~OutputFile() = default;
    /// Errors    StorageFull or Storage; the file then holds part of `bytes`.
    [[nodiscard]] virtual Result<void> append(ByteView bytes) = 0;
    /// Return when all that was appended would survive a loss of power.
    [[nodiscard]] virtual Result<void> sync() = 0;
};

/// Held while it lives.
class FileLock {
public:
    virtual ~FileLock() = default;
};

/// The disk, apart from what SQLite does. Core touches files through nothing else.
///
/// Errors    NotFound where the path does not exist, Conflict where it must not and does,
///           StorageFull, else Storage; `subject` is the path.
class FileSystem {
public:
    virtual ~FileSystem() = default;
    [[nodiscard]] virtual Result<std::unique_ptr<InputFile>> open(const Path& path) = 0;
    /// Errors    Conflict if `path` exists.
    [[nodiscard]] virtual Result<std::unique_ptr<OutputFile>> create(const Path& path) = 0;
    /// Like create(), but only the owner of the process may read it (mode 600).
    [[nodiscard]] virtual Result<std::unique_ptr<OutputFile>> createPrivate(const Path& path) = 0;
    /// Rename within a folder or file system, replacing `to` if it exists. Durable after
    /// syncFolder() on both parents.
    [[nodiscard]] virtual Result<void> rename(const Path& from, const Path& to) = 0;
    [[nodiscard]] virtual Result<void> remove(const Path& path) = 0;
    /// Make the folder and those above it; fine if it exists.
    [[nodiscard]] virtual Result<void> makeFolder(const Path& path) = 0;
    [[nodiscard]] virtual Result<void> syncFolder(const Path& path) = 0;
    [[nodiscard]] virtual bool exists(const Path& path) = 0;
    /// Return the names in a folder, sorted, without "." and "..".
    [[nodiscard]] virtual Result<std::vector<std::string>> list(const Path& folder) = 0;
    /// Return how much may still be written where `folder` lies; a system that does not know says
    /// that there is no end of it.
    [[nodiscard]] virtual Result<std::uint64_t> freeBytes(const Path& folder);
    /// Hold `path` against other processes. The file keeps `holder` for those who are refused.
    ///
    /// Errors    Locked if another process holds it; `value` is what that one wrote as holder.
    [[nodiscard]] virtual Result<std::unique_ptr<FileLock>> lock(const Path& path,
                                                                 const std::string& holder) = 0;
};

/// Return the folder that `path` lies in: "." for a bare name.
[[nodiscard]] Path folderOf(const Path& path);

/// Return all bytes of the file at `path`.
///
/// Errors    TooLarge if it has more than `maxBytes`; else those of FileSystem.
[[nodiscard]] Result<Bytes> readWhole(FileSystem& files, const Path& path, std::uint64_t maxBytes);

/// Write `bytes` to `path` so that after any loss of power there is the whole new file or the
/// old one: a temporary name beside it, sync, rename, sync of the folder.
[[nodiscard]] Result<void> writeWhole(FileSystem& files, const Path& path, ByteView bytes);

/// The same for a secret: only the owner of the process may read the file (mode 600).
[[nodiscard]] Result<void> writeWholePrivate(FileSystem& files, const Path& path, ByteView bytes);

/// Copy the file `from` to `to`, in pieces, so that after any loss of power `to` is the whole new
/// file or what it was before.
[[nodiscard]] Result<void> copyWhole(FileSystem& files, const Path& from, const Path& to);

}  // namespace spile::inline base
