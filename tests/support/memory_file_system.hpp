#pragma once

#include "core/base/file_system.hpp"

#include <map>

namespace spile::support {

/// A disk in memory that forgets, at loseUnsynced(), whatever was not made to last.
///
/// It is as strict as POSIX allows: the bytes of a file last after its sync(), its name (new,
/// changed or removed) after syncFolder() on the folder it is in, and a folder likewise after
/// syncFolder() on its parent. Only "/" is there at the start; paths count from there.
class MemoryFileSystem final : public FileSystem {
public:
    MemoryFileSystem();

    [[nodiscard]] Result<std::unique_ptr<InputFile>> open(const Path& path) override;
    [[nodiscard]] Result<std::unique_ptr<OutputFile>> create(const Path& path) override;
    [[nodiscard]] Result<std::unique_ptr<OutputFile>> createPrivate(const Path& path) override;
    [[nodiscard]] Result<void> rename(const Path& from, const Path& to) override;
    [[nodiscard]] Result<void> remove(const Path& path) override;
    [[nodiscard]] Result<void> makeFolder(const Path& path) override;
    [[nodiscard]] Result<void> syncFolder(const Path& path) override;
    [[nodiscard]] bool exists(const Path& path) override;
    [[nodiscard]] Result<std::vector<std::string>> list(const Path& folder) override;
    [[nodiscard]] Result<std::unique_ptr<FileLock>> lock(const Path& path,
                                                         const std::string& holder) override;

    /// Cut the power: what was not synced is as it was before, and nothing is locked.
    void loseUnsynced();
    /// Whether the file at `path` was made by createPrivate().
    [[nodiscard]] bool isPrivate(const Path& path) const;

    struct Node;

private:
    std::shared_ptr<Node> root_;
};

}  // namespace spile::support
