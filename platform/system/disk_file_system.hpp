#pragma once

#include "core/base/file_system.hpp"

namespace spile::system {

/// The disk of this machine, by POSIX calls.
///
/// A lock is an flock() on the file: it ends with the process, however that ends, so nothing is
/// left to clean up after a loss of power. The file itself stays. A Locked error has the other's
/// holder text as `value` and what to do as `limit`.
///
/// Threads   any number; a file that it opened belongs to one thread at a time.
class DiskFileSystem final : public FileSystem {
public:
    [[nodiscard]] Result<std::unique_ptr<InputFile>> open(const Path& path) override;
    [[nodiscard]] Result<std::unique_ptr<OutputFile>> create(const Path& path) override;
    [[nodiscard]] Result<std::unique_ptr<OutputFile>> createPrivate(const Path& path) override;
    [[nodiscard]] Result<void> rename(const Path& from, const Path& to) override;
    [[nodiscard]] Result<void> remove(const Path& path) override;
    [[nodiscard]] Result<void> makeFolder(const Path& path) override;
    [[nodiscard]] Result<void> syncFolder(const Path& path) override;
    [[nodiscard]] bool exists(const Path& path) override;
    [[nodiscard]] Result<std::vector<std::string>> list(const Path& folder) override;
    [[nodiscard]] Result<std::uint64_t> freeBytes(const Path& folder) override;
    [[nodiscard]] Result<std::unique_ptr<FileLock>> lock(const Path& path,
                                                         const std::string& holder) override;
};

}  // namespace spile::system
